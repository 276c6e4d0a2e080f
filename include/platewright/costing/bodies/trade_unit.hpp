// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/costing/trade_unit.hpp.

#include "platewright/costing/trade_unit.hpp"

namespace platewright {

namespace detail {

PLATEWRIGHT_BODY std::string_view compared_by(UnitDimension dimension, MeasuringSystem system) {
  const bool pounds = system == MeasuringSystem::us || system == MeasuringSystem::imperial;
  if (system == MeasuringSystem::any) return {};
  if (dimension == UnitDimension::mass) return pounds ? "pound" : "kilogram";
  if (dimension != UnitDimension::volume) return {};
  if (system == MeasuringSystem::us) return "US quart";
  return system == MeasuringSystem::imperial ? "imperial pint" : "litre";
}

}  // namespace detail

PLATEWRIGHT_BODY Unit trade_unit(const Unit& unit) {
  const std::string_view name = detail::compared_by(unit.dimension(), unit.record().system);
  if (name.empty() || unit.name() == "US dry pint") return unit;
  const Unit& trade = built_in_unit(name);
  return unit.size() < trade.size() ? trade : unit;
}

}  // namespace platewright
