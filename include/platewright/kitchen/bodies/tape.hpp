// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/kitchen/tape.hpp.

#include "platewright/kitchen/tape.hpp"

namespace platewright {

PLATEWRIGHT_BODY KitchenRule inch_tape(const UnitTable& table) {
  const Rational inch = Length::of(1, units::inch).in(units::centimetre);
  const Rational foot = inch * 12;
  return {{{{0, inch / 4}, {foot, inch}, {foot * 3, inch * 6}, {foot * 20, foot}}},
          {{table.find("ft", MeasuringSystem::us), foot * 3, 0},
           {table.find("in", MeasuringSystem::us), 0, 0}}};
}

PLATEWRIGHT_BODY KitchenRule centimetre_tape(const UnitTable& table) {
  return {{{{0, fraction(1, 2)}, {10, 1}, {50, 5}, {100, 10}, {1000, 50}}},
          {{table.find("m", MeasuringSystem::metric), 100, 0, PartNumber::decimal},
           {table.find("cm", MeasuringSystem::metric), 0, 0, PartNumber::decimal}}};
}

PLATEWRIGHT_BODY KitchenRule tape_of(MeasuringSystem system, const UnitTable& table) {
  const bool feet = system == MeasuringSystem::us || system == MeasuringSystem::imperial;
  return feet ? inch_tape(table) : centimetre_tape(table);
}

}  // namespace platewright
