// SPDX-License-Identifier: MIT
#pragma once
// The cook's own timed roast at another weight.

#include <vector>

#include "platewright/problem/body.hpp"
#include "platewright/recipe/scale_plan.hpp"

namespace platewright {

/// A setting of the oven for the pieces that are cooked. Its temperatures are those of the recipe.
struct PlannedOvenStep {
  OvenStep step;
  bool estimate = false;  ///< the time was scaled, not timed: cook to temperature
};

/// The oven settings of a plan. Heat reaches the middle in a time that goes with the square of the
/// thickness, so the whole time in the oven follows weight^(2/3) for pieces of one shape (a rule of
/// food-science textbooks); the number of pieces and the size of the batch change nothing. What was
/// timed before the step that ends at a temperature (browning) stays as it is, and that step takes
/// the difference; where nothing would be left for it, every time is scaled alike. Temperatures
/// never change.
std::vector<PlannedOvenStep> oven_plan(const Recipe& recipe, const ScalePlan& plan);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/recipe/bodies/roasting_time.hpp"
#endif
