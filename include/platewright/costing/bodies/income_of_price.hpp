// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/costing/income_of_price.hpp.

#include <algorithm>

#include "platewright/costing/income_of_price.hpp"

namespace platewright {

PLATEWRIGHT_BODY IncomeOfPrice::IncomeOfPrice(const Quote& quote)
    : full_prices_(quote.full_prices),
      own_prices_(quote.own_prices),
      net_(quote.net_share),
      minimum_(quote.terms.minimum_charge.value_or(Money())) {}

PLATEWRIGHT_BODY IncomeOfPrice IncomeOfPrice::with_discounts(const Quote& quote) {
  IncomeOfPrice out(quote);
  for (const Discount& discount : quote.terms.discounts) {
    if (!discount.of.empty()) continue;
    out.share_off_ += discount.share.value_or(0);
    out.sum_off_ += discount.sum.value_or(Money());
  }
  out.lost_ = quote.lost_on_extras;
  return out;
}

PLATEWRIGHT_BODY Money IncomeOfPrice::subtotal(const Money& price) const {
  const Money all = price * full_prices_ + own_prices_;
  return std::max({minimum_, Money(), all * Rational(1 - share_off_) - sum_off_});
}

PLATEWRIGHT_BODY std::optional<Money> IncomeOfPrice::price_for(const Money& income) const {
  if (full_prices_ == 0 || share_off_ >= 1) return std::nullopt;
  const Money subtotal = (income + lost_) / net_;
  return ((subtotal + sum_off_) / Rational(1 - share_off_) - own_prices_) / full_prices_;
}

}  // namespace platewright
