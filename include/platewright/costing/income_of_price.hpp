// SPDX-License-Identifier: MIT
#pragma once
// What a caterer has of the guests as their price is higher or lower: the formula, and turned
// round.

#include <algorithm>
#include <optional>

#include "platewright/costing/quote.hpp"

namespace platewright {

/// income = the greater of (price x full prices + prices of their own) x (1 - shares off) - sums
/// off and of the minimum charge, without its tax, less what is off extras that are billed. All of
/// it is exact: what is rounded on a bill brings in no less. Every question about a quote's income
/// goes through here.
class IncomeOfPrice {
 public:
  /// By the guests and terms of a quote whose full prices are counted.
  explicit IncomeOfPrice(const Quote& quote)
      : full_prices_(quote.full_prices),
        own_prices_(quote.own_prices),
        net_(quote.net_share),
        minimum_(quote.terms.minimum_charge.value_or(Money())) {}

  /// With everything that is off.
  static IncomeOfPrice with_discounts(const Quote& quote) {
    IncomeOfPrice out(quote);
    for (const Discount& discount : quote.terms.discounts) {
      if (!discount.of.empty()) continue;
      out.share_off_ += discount.share.value_or(0);
      out.sum_off_ += discount.sum.value_or(Money());
    }
    out.lost_ = quote.lost_on_extras;
    return out;
  }

  /// What the guests pay together at this full price, tax and all.
  Money subtotal(const Money& price) const {
    const Money all = price * full_prices_ + own_prices_;
    return std::max({minimum_, Money(), all * Rational(1 - share_off_) - sum_off_});
  }

  Money income(const Money& price) const { return subtotal(price) * net_ - lost_; }

  /// The full price that brings in `income` without any minimum charge; below 0 where prices of
  /// their own bring in more. Nothing where no guest pays the full price, or all of it is off.
  std::optional<Money> price_for(const Money& income) const {
    if (full_prices_ == 0 || share_off_ >= 1) return std::nullopt;
    const Money subtotal = (income + lost_) / net_;
    return ((subtotal + sum_off_) / Rational(1 - share_off_) - own_prices_) / full_prices_;
  }

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
