// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/recipe/roasting_time.hpp.

#include "platewright/recipe/roasting_time.hpp"

namespace platewright {

PLATEWRIGHT_BODY std::vector<PlannedOvenStep> oven_plan(const Recipe& recipe,
                                                        const ScalePlan& plan) {
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
