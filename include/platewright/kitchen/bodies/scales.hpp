// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/kitchen/scales.hpp.

#include "platewright/kitchen/scales.hpp"

namespace platewright {

PLATEWRIGHT_BODY KitchenRule ounce_scale(const UnitTable& table) {
  const Rational ounce = detail::grams(1, units::ounce);
  return {{{{0, ounce / 8}, {ounce * 2, ounce / 4}, {ounce * 80, ounce / 2}, {ounce * 320, ounce}}},
          pounds_and_ounces(table)};
}

PLATEWRIGHT_BODY KitchenRule gram_scale(const UnitTable& table) {
  return {{{{0, fraction(1, 10)}, {10, 1}, {100, 5}, {1000, 10}, {10000, 50}}},
          grams_and_kilograms(table)};
}

PLATEWRIGHT_BODY KitchenRule scale_of(MeasuringSystem system, const UnitTable& table) {
  const bool ounces = system == MeasuringSystem::us || system == MeasuringSystem::imperial;
  return ounces ? ounce_scale(table) : gram_scale(table);
}

}  // namespace platewright
