// SPDX-License-Identifier: MIT
#pragma once
// What a caterer has of the guests as their price is higher or lower: the formula, and turned
// round.

#include <optional>

#include "platewright/costing/quote.hpp"
#include "platewright/problem/body.hpp"

namespace platewright {

/// income = the greater of (price x full prices + prices of their own) x (1 - shares off) - sums
/// off and of the minimum charge, without its tax, less what is off extras that are billed. All of
/// it is exact: what is rounded on a bill brings in no less. Every question about a quote's income
/// goes through here.
class IncomeOfPrice {
 public:
  /// By the guests and terms of a quote whose full prices are counted.
  explicit IncomeOfPrice(const Quote& quote);

  /// With everything that is off.
  static IncomeOfPrice with_discounts(const Quote& quote);

  /// What the guests pay together at this full price, tax and all.
  Money subtotal(const Money& price) const;

  Money income(const Money& price) const { return subtotal(price) * net_ - lost_; }

  /// The full price that brings in `income` without any minimum charge; below 0 where prices of
  /// their own bring in more. Nothing where no guest pays the full price, or all of it is off.
  std::optional<Money> price_for(const Money& income) const;

 private:
  Rational full_prices_;
  Money own_prices_;
  Rational net_;
  Money minimum_;
  Rational share_off_;
  Money sum_off_;
  Money lost_;
};

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/costing/bodies/income_of_price.hpp"
#endif
