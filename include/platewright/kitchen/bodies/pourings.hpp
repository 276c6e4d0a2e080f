// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/kitchen/pourings.hpp.

#include "platewright/kitchen/pourings.hpp"

namespace platewright {

PLATEWRIGHT_BODY Pourings pourings_of(const Rational& number, PartNumber written) {
  if (written == PartNumber::decimal) return {0, 1};
  const Rational whole = down_to(number, 1);
  return whole == number ? Pourings{0, whole} : Pourings{1, whole + 1};
}

PLATEWRIGHT_BODY Pourings pourings_of(const KitchenMeasure& measure) {
  Pourings out;
  for (const KitchenPart& part : measure.parts) {
    out += pourings_of(part.amount.number, part.written);
  }
  if (measure.parts.size() == 1) out.fractions = 0;
  return out;
}

}  // namespace platewright
