// SPDX-License-Identifier: MIT
#pragma once
// The measures that kitchens usually own, by measuring system.

#include "platewright/kitchen/measure_set.hpp"
#include "platewright/problem/body.hpp"
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
KitchenSet us_kitchen(const UnitTable& table);

/// Spoons as they are sold in the United Kingdom (5 and 15 mL) with quarters of a teaspoon, fluid
/// ounces from a jug (2 to 19), pints with their quarters, gallons with their halves. Common
/// practice, no source.
KitchenSet imperial_kitchen(const UnitTable& table);

/// The spoons of the system named (1.25, 2.5, 3.75 and 5 mL, and 15; in Australia 20), a jug marked
/// every 5 mL from 50, 10 from 100, 25 from 250, 50 from 500, and litres by 0.05 from 1, 0.1 from 2
/// and 0.5 from 10. Common practice, no source.
KitchenSet metric_kitchen(const UnitTable& table, MeasuringSystem system = MeasuringSystem::metric);

/// The measures that a kitchen of the measuring system owns where its book declares none.
KitchenSet kitchen_of(MeasuringSystem system, const UnitTable& table);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/kitchen/bodies/usual_measures.hpp"
#endif
