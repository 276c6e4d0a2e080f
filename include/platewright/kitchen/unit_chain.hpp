// SPDX-License-Identifier: MIT
#pragma once
// A value written exactly in a chain of units: pounds, then ounces.

#include <vector>

#include "platewright/kitchen/measured_parts.hpp"
#include "platewright/quantity/unit_table.hpp"

namespace platewright {

/// One unit of a chain: what is left is taken in whole steps of it, or all of it where the step is
/// 0. It is passed over while less than `from` (in g, mL or cm) is left.
struct KitchenLink {
  Unit unit;
  Rational from;
  Rational step;
  PartNumber written = PartNumber::mixed;

  friend bool operator==(const KitchenLink&, const KitchenLink&) = default;
};

/// The largest unit first; the last one takes all that is left.
using KitchenChain = std::vector<KitchenLink>;

/// The terms of `value` (g, mL or cm), whose sum is `value` exactly; a value of 0 is 0 of the last
/// unit.
inline std::vector<KitchenPart> in_chain(const Rational& value, const KitchenChain& chain) {
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

/// `4 lb 5 1/2 oz`.
inline KitchenChain pounds_and_ounces(const UnitTable& table) {
  return {{table.find("lb", MeasuringSystem::us), 0, 1},
          {table.find("oz", MeasuringSystem::us), 0, 0}};
}

/// `4.35 lb`.
inline KitchenChain decimal_pounds(const UnitTable& table) {
  return {{table.find("lb", MeasuringSystem::us), 0, 0, PartNumber::decimal}};
}

/// `850 g`, from one kilogram on `1.25 kg`.
inline KitchenChain grams_and_kilograms(const UnitTable& table) {
  return {{table.find("kg", MeasuringSystem::metric), 1000, 0, PartNumber::decimal},
          {table.find("g", MeasuringSystem::metric), 0, 0, PartNumber::decimal}};
}

/// `1 gal + 2 qt + 3/4 cup + 2 tbsp + 1/4 tsp`: the order of the Armed Forces Recipe Service, TM
/// 10-412, card A-1, 2003. Cups are taken in quarters, so that there are never more than three
/// tablespoons: common practice, no source.
inline KitchenChain gallons_to_teaspoons(const UnitTable& table) {
  const auto unit = [&](const char* name) { return table.find(name, MeasuringSystem::us); };
  return {{unit("gal"), 0, 1},
          {unit("qt"), 0, 1},
          {unit("cup"), 0, fraction(1, 4)},
          {unit("tbsp"), 0, 1},
          {unit("tsp"), 0, 0}};
}

/// `1 gal + 3 pt + 7 1/2 fl oz`, the imperial ones; pints are taken whole. Common practice, no
/// source.
inline KitchenChain imperial_gallons_to_fluid_ounces(const UnitTable& table) {
  const auto unit = [&](const char* name) { return table.find(name, MeasuringSystem::imperial); };
  return {{unit("gal"), 0, 1}, {unit("pt"), 0, 1}, {unit("fl oz"), 0, 0}};
}

/// `850 mL`, from one litre on `1.25 L`.
inline KitchenChain litres_and_millilitres(const UnitTable& table) {
  return {{table.find("L", MeasuringSystem::metric), 1000, 0, PartNumber::decimal},
          {table.find("mL", MeasuringSystem::metric), 0, 0, PartNumber::decimal}};
}

}  // namespace platewright
