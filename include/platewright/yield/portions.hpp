// SPDX-License-Identifier: MIT
#pragma once
// Weights, portions and guests: what a weight serves, what to buy, and what a portion comes to.

#include "platewright/number/round.hpp"
#include "platewright/quantity/positive.hpp"
#include "platewright/yield/ladder.hpp"

namespace platewright {

/// What a weight that is ready to serve comes to.
struct PortionsServed {
  Mass served;
  Mass portion;
  /// Whole portions, rounded down.
  Integer portions;
  /// What is left when all whole portions are served; less than a portion.
  Mass left_over;
};

/// The portions in a weight at the plate. Throws Failure for a portion of 0 or less and a weight
/// below 0.
inline PortionsServed portions_from(const Mass& served, const Mass& portion) {
  check_positive("a portion", portion);
  check_not_negative("a weight", served);
  const Integer portions = floor_of(served / portion);
  return {served, portion, portions, served - portion * Rational(portions)};
}

/// The portions in a weight at the ladder's first stage.
inline PortionsServed portions_from(const Ladder& ladder, const Mass& purchased,
                                    const Mass& portion) {
  return portions_from(ladder.down(purchased), portion);
}

/// The exact weight behind a number of portions; an order rounds it up to what can be bought.
struct WeightToBuy {
  Rational portions;
  Mass portion;
  /// portions x portion, at the ladder's last stage.
  Mass served;
  /// The same weight at the ladder's first stage.
  Mass purchased;
};

/// What to buy for `portions` (guests, or guests times their portion share) of the weight
/// `portion`: purchased = portions x portion / yield. Throws Failure for 0 or less of either.
inline WeightToBuy weight_to_buy(const Ladder& ladder, const Rational& portions,
                                 const Mass& portion) {
  check_positive("a number of portions", portions);
  check_positive("a portion", portion);
  const Mass served = portion * portions;
  return {portions, portion, served, ladder.up(served)};
}

/// Whole pieces that cover a need.
struct PiecesToBuy {
  WeightToBuy need;
  /// The average weight of a piece as purchased.
  Mass piece;
  /// Rounded up.
  Integer pieces;
  Mass purchased;
  /// What these pieces weigh at the plate.
  Mass served;
  /// Whole portions in them, rounded down.
  Integer serves;
  /// Beyond the need, as purchased and at the plate.
  Mass surplus_purchased;
  Mass surplus_served;
};

/// `count` pieces against a need.
inline PiecesToBuy pieces_against(const Ladder& ladder, const WeightToBuy& need, const Mass& piece,
                                  const Integer& count) {
  check_positive("a piece", piece);
  const Mass purchased = piece * Rational(count);
  const Mass served = ladder.down(purchased);
  return {need,
          piece,
          count,
          purchased,
          served,
          portions_from(served, need.portion).portions,
          purchased - need.purchased,
          served - need.served};
}

/// The fewest whole pieces of an average weight (as purchased) that cover the need. Throws Failure
/// for a piece that weighs 0 or less.
inline PiecesToBuy pieces_to_buy(const Ladder& ladder, const WeightToBuy& need, const Mass& piece) {
  check_positive("a piece", piece);
  return pieces_against(ladder, need, piece, ceiling_of(need.purchased / piece));
}

/// The portion at the plate that a weight as purchased gives. Throws Failure for 0 or less of
/// either.
inline Mass portion_for(const Ladder& ladder, const Mass& purchased, const Rational& portions) {
  check_positive("a number of portions", portions);
  check_positive("a weight", purchased);
  return ladder.down(purchased) / portions;
}

}  // namespace platewright
