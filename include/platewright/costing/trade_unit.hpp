// SPDX-License-Identifier: MIT
#pragma once
// The unit by which the trade compares prices.

#include <string_view>

#include "platewright/quantity/built_in_units.hpp"

namespace platewright {

namespace detail {

/// Empty where prices of a measure are compared by that measure itself.
inline std::string_view compared_by(UnitDimension dimension, MeasuringSystem system) {
  const bool pounds = system == MeasuringSystem::us || system == MeasuringSystem::imperial;
  if (system == MeasuringSystem::any) return {};
  if (dimension == UnitDimension::mass) return pounds ? "pound" : "kilogram";
  if (dimension != UnitDimension::volume) return {};
  if (system == MeasuringSystem::us) return "US quart";
  return system == MeasuringSystem::imperial ? "imperial pint" : "litre";
}

}  // namespace detail

/// Kilograms and litres for metric measures; pounds, US quarts and imperial pints for the others;
/// what is larger, a gallon or a tonne, stays, and so do dry pints, scoops, counts and a user's own
/// units. Common practice, no source.
inline Unit trade_unit(const Unit& unit) {
  const std::string_view name = detail::compared_by(unit.dimension(), unit.record().system);
  if (name.empty() || unit.name() == "US dry pint") return unit;
  const Unit& trade = built_in_unit(name);
  return unit.size() < trade.size() ? trade : unit;
}

}  // namespace platewright
