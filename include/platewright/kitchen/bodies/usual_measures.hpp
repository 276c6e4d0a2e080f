// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/kitchen/usual_measures.hpp.

#include "platewright/kitchen/usual_measures.hpp"

namespace platewright {

PLATEWRIGHT_BODY KitchenSet us_kitchen(const UnitTable& table) {
  const auto unit = [&](const char* name) { return table.find(name, MeasuringSystem::us); };
  const Rational eighth = fraction(1, 8);
  const Rational quarter = fraction(1, 4);
  const Rational most = fraction(15, 4);
  return KitchenSet({
      {unit("tsp"), eighth, fraction(11, 4), 1, {eighth, quarter, quarter * 2, quarter * 3}},
      {unit("tbsp"), 1, 3, 1, {}},
      {unit("cup"),
       quarter,
       most,
       1,
       {quarter, fraction(1, 3), quarter * 2, fraction(2, 3), quarter * 3}},
      {unit("qt"), 1, most, 1, detail::quarters()},
      {unit("gal"), 1, {}, 1, {quarter * 2}},
  });
}

PLATEWRIGHT_BODY KitchenSet imperial_kitchen(const UnitTable& table) {
  const auto unit = [&](const char* name) { return table.find(name, MeasuringSystem::imperial); };
  const Rational quarter = fraction(1, 4);
  return KitchenSet({
      {unit("tsp"), quarter, fraction(11, 4), 1, detail::quarters()},
      {unit("tbsp"), 1, 3, 1, {}},
      {unit("fl oz"), 2, 19, 1, {}},
      {unit("pt"), quarter, fraction(31, 4), 1, detail::quarters()},
      {unit("gal"), 1, {}, 1, {fraction(1, 2)}},
  });
}

PLATEWRIGHT_BODY KitchenSet metric_kitchen(const UnitTable& table, MeasuringSystem system) {
  const auto unit = [&](const char* name) { return table.find(name, system); };
  const Unit teaspoon = unit("tsp");
  const Unit tablespoon = unit("tbsp");
  const Rational quarter = fraction(1, 4);
  const Unit ml = unit("mL");
  const Unit litre = unit("L");
  const PartNumber decimal = PartNumber::decimal;
  return KitchenSet({
      {teaspoon, quarter, tablespoon.size() / teaspoon.size() - quarter, 1, detail::quarters()},
      {tablespoon, 1, 3, 1, {}},
      {ml, 50, 95, 5, {}, decimal},
      {ml, 100, 240, 10, {}, decimal},
      {ml, 250, 475, 25, {}, decimal},
      {ml, 500, 950, 50, {}, decimal},
      {litre, 1, fraction(39, 20), fraction(1, 20), {}, decimal},
      {litre, 2, fraction(99, 10), fraction(1, 10), {}, decimal},
      {litre, 10, {}, fraction(1, 2), {}, decimal},
  });
}

PLATEWRIGHT_BODY KitchenSet kitchen_of(MeasuringSystem system, const UnitTable& table) {
  switch (system) {
    case MeasuringSystem::us:
      return us_kitchen(table);
    case MeasuringSystem::imperial:
      return imperial_kitchen(table);
    case MeasuringSystem::australian:
    case MeasuringSystem::japanese:
      return metric_kitchen(table, system);
    case MeasuringSystem::metric:
    case MeasuringSystem::labelling:
    case MeasuringSystem::any:
      break;
  }
  return metric_kitchen(table);
}

}  // namespace platewright
