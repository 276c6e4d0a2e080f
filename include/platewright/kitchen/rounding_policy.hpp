// SPDX-License-Identifier: MIT
#pragma once
// Published rounding tables for the amounts of a scaled recipe.

#include <string_view>

#include "platewright/kitchen/rounding_steps.hpp"
#include "platewright/number/write.hpp"
#include "platewright/problem/body.hpp"
#include "platewright/problem/catalogue/numbers.hpp"
#include "platewright/problem/failure.hpp"
#include "platewright/quantity/quantity.hpp"
#include "platewright/quantity/units.hpp"

namespace platewright {

/// By whose table the amounts of a card are rounded. The tables differ, so the user chooses.
enum class KitchenPolicy {
  exact,         ///< nothing is rounded
  army_card,     ///< Armed Forces Recipe Service, TM 10-412, card A-1, 2003
  usda_schools,  ///< the guide for rounding off weights and measures in school kitchens, USDA
  nearest_step,  ///< to one step of the user's own
};

std::string_view policy_name(KitchenPolicy policy);

namespace detail {

inline Rational grams(const Rational& count, const NamedUnit<MassDimension>& unit) {
  return Mass::of(count, unit).in(units::gram);
}
inline Rational millilitres(const Rational& count, const NamedUnit<VolumeDimension>& unit) {
  return Volume::of(count, unit).in(units::millilitre);
}

}  // namespace detail

/// Quarter ounces: card A-1 takes .00-.12 oz down, .13-.37 to 1/4, .38-.62 to 1/2, .63-.87 to 3/4
/// and .88-.99 to the next ounce, which is the nearest quarter with a tie up.
inline KitchenSteps army_card_weights() {
  return {{{0, detail::grams(fraction(1, 4), units::ounce)}}};
}

/// Quarter teaspoons, whatever the size.
inline KitchenSteps army_card_measures() {
  return {{{0, detail::millilitres(fraction(1, 4), units::us_teaspoon)}}};
}

/// 1/4 oz up to 10 oz, 1/2 oz up to 2 lb 8 oz, 1 oz up to 5 lb, 1/4 lb above. Under 2 oz the table
/// asks for a measure unless the weight is in quarters of an ounce; a weight is in quarters here.
KitchenSteps usda_schools_weights();

/// 1/8 tsp under 1 tbsp, 1/4 tsp up to 3 tbsp, 1/2 tsp up to 1/2 cup, 1 tsp up to 3/4 cup, 1/4 cup
/// from 2 cups, 1/2 cup from 2 qt, 1 cup from 1 gal, 1 qt from 2 gal, 1/2 gal from 10 gal, 1 gal
/// from 20 gal. The table has no row from 3/4 cup to 2 cups; 1 tbsp stands there, which lies
/// between its neighbours (common practice, no source).
KitchenSteps usda_schools_measures();

/// The policy's table for weights. `step` is used by `nearest_step` alone, which throws Failure for
/// one that is not above 0.
KitchenSteps weight_steps(KitchenPolicy policy, const Mass& step = {});

/// The policy's table for capacities; as `weight_steps`.
KitchenSteps measure_steps(KitchenPolicy policy, const Volume& step = {});

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/kitchen/bodies/rounding_policy.hpp"
#endif
