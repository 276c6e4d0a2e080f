// SPDX-License-Identifier: MIT
#pragma once
// What kitchen scales show, and when a cook weighs instead of measuring.

#include "platewright/kitchen/rounding_policy.hpp"
#include "platewright/kitchen/rounding_rule.hpp"

namespace platewright {

/// Pounds and ounces: by 1/8 oz under 2 oz, 1/4 oz under 5 lb, 1/2 oz under 20 lb, 1 oz above.
/// Common practice, no source.
inline KitchenRule ounce_scale(const UnitTable& table) {
  const Rational ounce = detail::grams(1, units::ounce);
  return {{{{0, ounce / 8}, {ounce * 2, ounce / 4}, {ounce * 80, ounce / 2}, {ounce * 320, ounce}}},
          pounds_and_ounces(table)};
}

/// Pounds with two decimals, as the Armed Forces Recipe Service, TM 10-412, card A-1, 2003, turns
/// ounces into pounds.
inline KitchenRule decimal_pound_scale(const UnitTable& table) {
  return {{{{0, detail::grams(fraction(1, 100), units::pound)}}}, decimal_pounds(table)};
}

/// Grams and kilograms: by 0.1 g under 10 g (a spice scale), 1 g under 100 g, 5 g under 1 kg, 0.01
/// kg under 10 kg, 0.05 kg above. Common practice, no source.
inline KitchenRule gram_scale(const UnitTable& table) {
  return {{{{0, fraction(1, 10)}, {10, 1}, {100, 5}, {1000, 10}, {10000, 50}}},
          grams_and_kilograms(table)};
}

/// The scale that a kitchen of the measuring system has where its book declares none.
inline KitchenRule scale_of(MeasuringSystem system, const UnitTable& table) {
  const bool ounces = system == MeasuringSystem::us || system == MeasuringSystem::imperial;
  return ounces ? ounce_scale(table) : gram_scale(table);
}

/// True where an ingredient is weighed even though its measure is known: from `from` on, one pound
/// if nothing else is said (common practice, no source).
inline bool weights_win(const Mass& weight, const Mass& from = Mass::of(1, units::pound)) {
  return weight >= from;
}

}  // namespace platewright
