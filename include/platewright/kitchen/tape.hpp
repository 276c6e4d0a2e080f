// SPDX-License-Identifier: MIT
#pragma once
// Lengths as they are cut off: twine, netting, paper.

#include "platewright/kitchen/rounding_policy.hpp"
#include "platewright/kitchen/rounding_rule.hpp"

namespace platewright {

/// Inches, from three feet on feet: by 1/4 in under 1 ft, 1 in under 3 ft, 6 in under 20 ft, 1 ft
/// above. Common practice, no source.
inline KitchenRule inch_tape(const UnitTable& table) {
  const Rational inch = Length::of(1, units::inch).in(units::centimetre);
  const Rational foot = inch * 12;
  return {{{{0, inch / 4}, {foot, inch}, {foot * 3, inch * 6}, {foot * 20, foot}}},
          {{table.find("ft", MeasuringSystem::us), foot * 3, 0},
           {table.find("in", MeasuringSystem::us), 0, 0}}};
}

/// Centimetres, from one metre on metres: by 0.5 cm under 10 cm, 1 cm under 50 cm, 5 cm under 1 m,
/// 10 cm under 10 m, 50 cm above. Common practice, no source.
inline KitchenRule centimetre_tape(const UnitTable& table) {
  return {{{{0, fraction(1, 2)}, {10, 1}, {50, 5}, {100, 10}, {1000, 50}}},
          {{table.find("m", MeasuringSystem::metric), 100, 0, PartNumber::decimal},
           {table.find("cm", MeasuringSystem::metric), 0, 0, PartNumber::decimal}}};
}

/// The tape of a kitchen of the measuring system.
inline KitchenRule tape_of(MeasuringSystem system, const UnitTable& table) {
  const bool feet = system == MeasuringSystem::us || system == MeasuringSystem::imperial;
  return feet ? inch_tape(table) : centimetre_tape(table);
}

/// The length as it is cut off: up to the next step, so that no string is too short. `length` must
/// not be negative. Throws Failure for a rule whose units are not of length.
inline KitchenMeasure cut_off(const Length& length, const KitchenRule& rule) {
  return detail::by_rule(length.in(units::centimetre), rule, UnitDimension::length, Rounding::up);
}

}  // namespace platewright
