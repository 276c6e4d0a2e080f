// SPDX-License-Identifier: MIT
#pragma once
// Weights, portions and guests: what a weight serves, what to buy, and what a portion comes to.

#include "platewright/number/round.hpp"
#include "platewright/problem/body.hpp"
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
PortionsServed portions_from(const Mass& served, const Mass& portion);

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
WeightToBuy weight_to_buy(const Ladder& ladder, const Rational& portions, const Mass& portion);

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
PiecesToBuy pieces_against(const Ladder& ladder, const WeightToBuy& need, const Mass& piece,
                           const Integer& count);

/// The fewest whole pieces of an average weight (as purchased) that cover the need. Throws Failure
/// for a piece that weighs 0 or less.
PiecesToBuy pieces_to_buy(const Ladder& ladder, const WeightToBuy& need, const Mass& piece);

/// The portion at the plate that a weight as purchased gives. Throws Failure for 0 or less of
/// either.
Mass portion_for(const Ladder& ladder, const Mass& purchased, const Rational& portions);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/yield/bodies/portions.hpp"
#endif
