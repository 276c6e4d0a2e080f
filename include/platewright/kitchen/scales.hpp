// SPDX-License-Identifier: MIT
#pragma once
// What kitchen scales show, and when a cook weighs instead of measuring.

#include "platewright/kitchen/rounding_policy.hpp"
#include "platewright/kitchen/rounding_rule.hpp"
#include "platewright/problem/body.hpp"

namespace platewright {

/// Pounds and ounces: by 1/8 oz under 2 oz, 1/4 oz under 5 lb, 1/2 oz under 20 lb, 1 oz above.
/// Common practice, no source.
KitchenRule ounce_scale(const UnitTable& table);

/// Pounds with two decimals, as the Armed Forces Recipe Service, TM 10-412, card A-1, 2003, turns
/// ounces into pounds.
inline KitchenRule decimal_pound_scale(const UnitTable& table) {
  return {{{{0, detail::grams(fraction(1, 100), units::pound)}}}, decimal_pounds(table)};
}

/// Grams and kilograms: by 0.1 g under 10 g (a spice scale), 1 g under 100 g, 5 g under 1 kg, 0.01
/// kg under 10 kg, 0.05 kg above. Common practice, no source.
KitchenRule gram_scale(const UnitTable& table);

/// The scale that a kitchen of the measuring system has where its book declares none.
KitchenRule scale_of(MeasuringSystem system, const UnitTable& table);

/// True where an ingredient is weighed even though its measure is known: from `from` on, one pound
/// if nothing else is said (common practice, no source).
inline bool weights_win(const Mass& weight, const Mass& from = Mass::of(1, units::pound)) {
  return weight >= from;
}

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/kitchen/bodies/scales.hpp"
#endif
