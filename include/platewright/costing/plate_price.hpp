// SPDX-License-Identifier: MIT
#pragma once
// The food against the price: which share it is, and which price a share asks for.

#include <optional>

#include "platewright/costing/quote_checks.hpp"
#include "platewright/problem/body.hpp"
#include "platewright/quantity/money.hpp"

namespace platewright {

/// The price at which the food is this share of it: food / share. Throws Failure for a share of 0
/// or less or above 100 %.
Money price_at_food_cost(const Money& food, const Rational& share);

/// The food-cost percentage, as a share: food / price. Throws Failure for a price of 0 or less.
Rational food_cost_share(const Money& food, const Money& price);

/// What is asked of the cost of one plate.
struct PlatePriceQuestion {
  Rational q_factor;                   ///< share for what no one measures
  std::optional<Money> price;          ///< which share of it is the food?
  std::optional<Rational> food_share;  ///< which price does it ask for?
};

/// The answers, all exact.
struct PlatePrice {
  PlatePriceQuestion question;
  Money plate;                         ///< without the Q factor
  Money q;                             ///< plate x Q factor
  Money with_q;                        ///< plate + q
  std::optional<Rational> food_share;  ///< of the price asked about
  std::optional<Money> left;           ///< of that price, for everything but the food
  std::optional<Money> price;          ///< at the share asked about
};

/// Throws Failure for a Q factor below 0 or above 100 %, and as the two functions above do.
PlatePrice plate_price(const Money& plate, const PlatePriceQuestion& question);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/costing/bodies/plate_price.hpp"
#endif
