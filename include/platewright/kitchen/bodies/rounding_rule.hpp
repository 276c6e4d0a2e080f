// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/kitchen/rounding_rule.hpp.

#include "platewright/kitchen/rounding_rule.hpp"

namespace platewright {

namespace detail {

PLATEWRIGHT_BODY KitchenMeasure by_rule(const Rational& asked, const KitchenRule& rule,
                                        UnitDimension dimension, Rounding rounding) {
  for (const KitchenLink& link : rule.chain) expect_dimension(Amount{1, link.unit}, dimension);
  const Rational measured = rule.steps.rounded(asked, rounding);
  return KitchenMeasure{in_chain(measured, rule.chain), asked, measured, false};
}

}  // namespace detail

}  // namespace platewright
