// SPDX-License-Identifier: MIT
#pragma once
// How far prices and yields of an event's ingredients lie apart.

#include <string>
#include <utility>
#include <vector>

#include "platewright/event/occasion.hpp"
#include "platewright/problem/body.hpp"
#include "platewright/yield/how_sure.hpp"

namespace platewright {

/// The part of the food's cost that one ingredient has, and how far its price, its yield and the
/// weight of its pieces lie apart, each as a standard deviation relative to the average; 0 where
/// nothing is known.
struct UncertainCost {
  std::string ingredient;
  Money cost;
  Rational price_deviation;
  Rational yield_deviation;
  Rational weight_deviation = 0;

  bool is_known() const;
};

/// The relative standard deviation of the prices for one unit in a supplier's history (its offers
/// with a date, in one measure; n - 1 in the denominator); 0 for fewer than two.
Rational price_deviation(const PriceEntry& history);

namespace detail {

/// The relative variance of the rungs that print bounds and no deviation: that of values that lie
/// anywhere between them alike, (high - low)^2 / 12 (JCGM 100:2008, 4.3.7).
Rational variance_of_bounds(const Ladder& ladder);

}  // namespace detail

/// The relative standard deviation of the yield of one roast, from the deviations and the bounds of
/// the rungs that have them: published, or of trials.
inline Rational yield_deviation(const Ladder& ladder) {
  return square_root(relative_variance(ladder).over(1) + detail::variance_of_bounds(ladder));
}

/// The relative standard deviation of the weight of so many pieces together as are paid with
/// `cost`: that of one / sqrt(pieces); 0 for goods that are not bought by the piece.
Rational weight_deviation(const Purchase& purchase, const Money& cost);

/// The food of an occasion by ingredient. The spread of prices comes from `history`, that of yields
/// from the ingredients' ladders, that of a piece's weight from its offer. The costs sum to the
/// food exactly.
std::vector<UncertainCost> uncertain_costs(const Occasion& occasion, const PriceList& history);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/event/bodies/price_spread.hpp"
#endif
