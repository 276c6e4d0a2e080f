// SPDX-License-Identifier: MIT
#pragma once
// A weight inside the wording of a problem.

#include <string>

#include "platewright/number/write.hpp"
#include "platewright/quantity/quantity.hpp"
#include "platewright/quantity/units.hpp"

namespace platewright {

/// The weight in both systems, as the problem does not know which one its reader weighs in, each
/// rounded half up to two places: `226.8 g (8 oz)`, `4989.52 g (11 lb)`.
inline std::string weight_words(const Mass& mass) {
  const bool heavy = mass >= Mass::of(1, units::pound);
  const Rational customary = mass.in(heavy ? units::pound : units::ounce);
  return as_short_decimal(mass.in(units::gram), 2) + " g (" + as_short_decimal(customary, 2) +
         (heavy ? " lb)" : " oz)");
}

}  // namespace platewright
