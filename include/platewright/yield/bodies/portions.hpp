// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/yield/portions.hpp.

#include "platewright/yield/portions.hpp"

namespace platewright {

PLATEWRIGHT_BODY PortionsServed portions_from(const Mass& served, const Mass& portion) {
  check_positive("a portion", portion);
  check_not_negative("a weight", served);
  const Integer portions = floor_of(served / portion);
  return {served, portion, portions, served - portion * Rational(portions)};
}

PLATEWRIGHT_BODY WeightToBuy weight_to_buy(const Ladder& ladder, const Rational& portions,
                                           const Mass& portion) {
  check_positive("a number of portions", portions);
  check_positive("a portion", portion);
  const Mass served = portion * portions;
  return {portions, portion, served, ladder.up(served)};
}

PLATEWRIGHT_BODY PiecesToBuy pieces_against(const Ladder& ladder, const WeightToBuy& need,
                                            const Mass& piece, const Integer& count) {
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

PLATEWRIGHT_BODY PiecesToBuy pieces_to_buy(const Ladder& ladder, const WeightToBuy& need,
                                           const Mass& piece) {
  check_positive("a piece", piece);
  return pieces_against(ladder, need, piece, ceiling_of(need.purchased / piece));
}

PLATEWRIGHT_BODY Mass portion_for(const Ladder& ladder, const Mass& purchased,
                                  const Rational& portions) {
  check_positive("a number of portions", portions);
  check_positive("a weight", purchased);
  return ladder.down(purchased) / portions;
}

}  // namespace platewright
