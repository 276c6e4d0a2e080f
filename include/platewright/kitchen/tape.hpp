// SPDX-License-Identifier: MIT
#pragma once
// Lengths as they are cut off: twine, netting, paper.

#include "platewright/kitchen/rounding_policy.hpp"
#include "platewright/kitchen/rounding_rule.hpp"
#include "platewright/problem/body.hpp"

namespace platewright {

/// Inches, from three feet on feet: by 1/4 in under 1 ft, 1 in under 3 ft, 6 in under 20 ft, 1 ft
/// above. Common practice, no source.
KitchenRule inch_tape(const UnitTable& table);

/// Centimetres, from one metre on metres: by 0.5 cm under 10 cm, 1 cm under 50 cm, 5 cm under 1 m,
/// 10 cm under 10 m, 50 cm above. Common practice, no source.
KitchenRule centimetre_tape(const UnitTable& table);

/// The tape of a kitchen of the measuring system.
KitchenRule tape_of(MeasuringSystem system, const UnitTable& table);

/// The length as it is cut off: up to the next step, so that no string is too short. `length` must
/// not be negative. Throws Failure for a rule whose units are not of length.
inline KitchenMeasure cut_off(const Length& length, const KitchenRule& rule) {
  return detail::by_rule(length.in(units::centimetre), rule, UnitDimension::length, Rounding::up);
}

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/kitchen/bodies/tape.hpp"
#endif
