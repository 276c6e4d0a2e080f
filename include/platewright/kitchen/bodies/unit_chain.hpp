// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/kitchen/unit_chain.hpp.

#include "platewright/kitchen/unit_chain.hpp"

namespace platewright {

PLATEWRIGHT_BODY std::vector<KitchenPart> in_chain(const Rational& value,
                                                   const KitchenChain& chain) {
  std::vector<KitchenPart> parts;
  Rational left = value;
  for (const KitchenLink& link : chain) {
    if (left < link.from) continue;
    const Rational count = left / link.unit.size();
    const Rational number = link.step == 0 ? count : down_to(count, link.step);
    if (number == 0) continue;
    parts.push_back({Amount{number, link.unit}, link.written});
    left -= number * link.unit.size();
  }
  if (parts.empty()) parts.push_back({Amount{0, chain.back().unit}, chain.back().written});
  return parts;
}

PLATEWRIGHT_BODY KitchenChain pounds_and_ounces(const UnitTable& table) {
  return {{table.find("lb", MeasuringSystem::us), 0, 1},
          {table.find("oz", MeasuringSystem::us), 0, 0}};
}

PLATEWRIGHT_BODY KitchenChain grams_and_kilograms(const UnitTable& table) {
  return {{table.find("kg", MeasuringSystem::metric), 1000, 0, PartNumber::decimal},
          {table.find("g", MeasuringSystem::metric), 0, 0, PartNumber::decimal}};
}

PLATEWRIGHT_BODY KitchenChain gallons_to_teaspoons(const UnitTable& table) {
  const auto unit = [&](const char* name) { return table.find(name, MeasuringSystem::us); };
  return {{unit("gal"), 0, 1},
          {unit("qt"), 0, 1},
          {unit("cup"), 0, fraction(1, 4)},
          {unit("tbsp"), 0, 1},
          {unit("tsp"), 0, 0}};
}

PLATEWRIGHT_BODY KitchenChain imperial_gallons_to_fluid_ounces(const UnitTable& table) {
  const auto unit = [&](const char* name) { return table.find(name, MeasuringSystem::imperial); };
  return {{unit("gal"), 0, 1}, {unit("pt"), 0, 1}, {unit("fl oz"), 0, 0}};
}

PLATEWRIGHT_BODY KitchenChain litres_and_millilitres(const UnitTable& table) {
  return {{table.find("L", MeasuringSystem::metric), 1000, 0, PartNumber::decimal},
          {table.find("mL", MeasuringSystem::metric), 0, 0, PartNumber::decimal}};
}

}  // namespace platewright
