// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/costing/taxed.hpp.

#include "platewright/costing/taxed.hpp"

namespace platewright {

PLATEWRIGHT_BODY TaxRates::TaxRates(std::vector<TaxRate> rates) : rates_(std::move(rates)) {
  if (rates_.empty()) rates_.emplace_back();
}

PLATEWRIGHT_BODY Rational without_tax(const Taxed& taxed, const TaxRates& rates) {
  Rational out = 1;
  for (const TaxedPart& part : taxed.parts()) {
    const Rational& rate = rates[part.rate].share;
    out -= part.share * rate / (1 + rate);
  }
  return out;
}

}  // namespace platewright
