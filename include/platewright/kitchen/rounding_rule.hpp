// SPDX-License-Identifier: MIT
#pragma once
// Amounts rounded by a table and written in a chain of units.

#include "platewright/kitchen/rounding_steps.hpp"
#include "platewright/kitchen/unit_chain.hpp"
#include "platewright/problem/body.hpp"

namespace platewright {

/// To which steps an amount is rounded, and in which units it is then written:
/// `{army_card_weights(), pounds_and_ounces(table)}`.
struct KitchenRule {
  KitchenSteps steps;
  KitchenChain chain;

  friend bool operator==(const KitchenRule&, const KitchenRule&) = default;
};

namespace detail {
KitchenMeasure by_rule(const Rational& asked, const KitchenRule& rule, UnitDimension dimension,
                       Rounding rounding = Rounding::half_up);
}  // namespace detail

/// The weight as it is weighed out, at the nearest step unless another rounding is named. `weight`
/// must not be negative. Throws Failure for a rule whose units are not of weight.
inline KitchenMeasure weigh_out(const Mass& weight, const KitchenRule& rule,
                                Rounding rounding = Rounding::half_up) {
  return detail::by_rule(weight.in(units::gram), rule, UnitDimension::mass, rounding);
}

/// The capacity as it is measured out by a rounding table; `kitchen_measure` looks for the fewest
/// measures instead. `volume` must not be negative. Throws Failure for a rule whose units are not
/// of capacity.
inline KitchenMeasure measure_out(const Volume& volume, const KitchenRule& rule) {
  return detail::by_rule(volume.in(units::millilitre), rule, UnitDimension::volume);
}

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/kitchen/bodies/rounding_rule.hpp"
#endif
