// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/quantity/weight_words.hpp.

#include "platewright/quantity/weight_words.hpp"

namespace platewright {

PLATEWRIGHT_BODY std::string weight_words(const Mass& mass) {
  const bool heavy = mass >= Mass::of(1, units::pound);
  const Rational customary = mass.in(heavy ? units::pound : units::ounce);
  return as_short_decimal(mass.in(units::gram), 2) + " g (" + as_short_decimal(customary, 2) +
         (heavy ? " lb)" : " oz)");
}

}  // namespace platewright
