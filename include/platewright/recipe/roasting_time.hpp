// SPDX-License-Identifier: MIT
#pragma once
// The cook's own timed roast at another weight.

#include <vector>

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
inline std::vector<PlannedOvenStep> oven_plan(const Recipe& recipe, const ScalePlan& plan) {
  std::vector<PlannedOvenStep> out;
  for (const OvenStep& step : recipe.oven) out.push_back({step, false});
  if (!recipe.tested || !plan.piece_weight || *plan.piece_weight == recipe.tested->weight) {
    return out;
  }
  const Rational longer = two_thirds_power(*plan.piece_weight / recipe.tested->weight);
  Duration whole;
  PlannedOvenStep* finishing = nullptr;
  for (PlannedOvenStep& planned : out) {
    if (!planned.step.time) continue;
    whole += *planned.step.time;
    if (planned.step.until) finishing = &planned;
  }
  if (finishing != nullptr) {
    const Duration others = whole - *finishing->step.time;
    const Duration left = whole * longer - others;
    if (left > Duration()) {
      finishing->step.time = left;
      finishing->estimate = true;
      return out;
    }
  }
  for (PlannedOvenStep& planned : out) {
    if (!planned.step.time) continue;
    planned.step.time = *planned.step.time * longer;
    planned.estimate = true;
  }
  return out;
}

}  // namespace platewright
