// SPDX-License-Identifier: MIT
#pragma once
// A kitchen: its measures, its scale, its tape, its tolerance and its rounding.

#include "platewright/kitchen/measure.hpp"
#include "platewright/kitchen/rounding.hpp"
#include "platewright/kitchen/scales.hpp"
#include "platewright/kitchen/tape.hpp"
#include "platewright/kitchen/usual_measures.hpp"
#include "platewright/problem/body.hpp"

namespace platewright {

/// What a kitchen measures with, and how its cards are rounded.
struct Kitchen {
  MeasuringSystem system = MeasuringSystem::us;
  KitchenSet measures;
  KitchenRule scale;
  Rational tolerance = kitchen_tolerance();  ///< a share of the amount
  KitchenRounding rounding;
  KitchenRule tape;

  friend bool operator==(const Kitchen&, const Kitchen&) = default;
};

/// What a kitchen of the measuring system has where its book says nothing. Throws Failure where the
/// unit table lacks a unit of it.
Kitchen usual_kitchen(MeasuringSystem system, const UnitTable& table);

/// The measures that are read beside those of `system`: metric beside pints and pounds, US
/// customary beside metric.
inline MeasuringSystem other_measures(MeasuringSystem system) {
  return detail::counts_in_ounces(system) ? MeasuringSystem::metric : MeasuringSystem::us;
}

/// The capacity as the kitchen measures it: by its rounding rule, else in the fewest measures
/// within its tolerance. Throws Failure for a negative capacity.
KitchenMeasure measured_in(const Volume& volume, const Kitchen& kitchen);

/// The weight as the kitchen weighs it out: by its rounding rule, else as its scale shows it.
inline KitchenMeasure weighed_in(const Mass& weight, const Kitchen& kitchen,
                                 Rounding rounding = Rounding::half_up) {
  return weigh_out(weight, kitchen.rounding.weights.value_or(kitchen.scale), rounding);
}

/// The length as it is cut off by the kitchen's tape; exact where the kitchen rounds nothing.
KitchenMeasure cut_in(const Length& length, const Kitchen& kitchen);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/kitchen/bodies/kitchen.hpp"
#endif
