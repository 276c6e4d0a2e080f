// SPDX-License-Identifier: MIT
#pragma once
// The measures that kitchens usually own, by measuring system.

#include "platewright/kitchen/measure_set.hpp"
#include "platewright/quantity/unit_table.hpp"

namespace platewright {

namespace detail {
inline std::vector<Rational> quarters() {
  return {fraction(1, 4), fraction(1, 2), fraction(3, 4)};
}
}  // namespace detail

/// Teaspoons 1/8, 1/4, 1/2, 3/4 and 1 (up to 2 3/4), tablespoons (up to 3), cups 1/4, 1/3, 1/2,
/// 2/3, 3/4 and 1 (up to 3 3/4), quarts with their quarters, gallons with their halves. Half a
/// tablespoon is 1 1/2 teaspoons here: a kitchen that owns the spoon adds it. Common practice, no
/// source.
inline KitchenSet us_kitchen(const UnitTable& table) {
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

/// Spoons as they are sold in the United Kingdom (5 and 15 mL) with quarters of a teaspoon, fluid
/// ounces from a jug (2 to 19), pints with their quarters, gallons with their halves. Common
/// practice, no source.
inline KitchenSet imperial_kitchen(const UnitTable& table) {
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

/// The spoons of the system named (1.25, 2.5, 3.75 and 5 mL, and 15; in Australia 20), a jug marked
/// every 5 mL from 50, 10 from 100, 25 from 250, 50 from 500, and litres by 0.05 from 1, 0.1 from 2
/// and 0.5 from 10. Common practice, no source.
inline KitchenSet metric_kitchen(const UnitTable& table,
                                 MeasuringSystem system = MeasuringSystem::metric) {
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

/// The measures that a kitchen of the measuring system owns where its book declares none.
inline KitchenSet kitchen_of(MeasuringSystem system, const UnitTable& table) {
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
