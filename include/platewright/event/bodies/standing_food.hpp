// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/event/standing_food.hpp.

#include <algorithm>
#include <chrono>
#include <string>

#include "platewright/event/standing_food.hpp"

namespace platewright::detail {

PLATEWRIGHT_BODY bool is_kept_safe(const MethodStep& step, const SafetyTable& safety) {
  if (!step.control || !keeps_food(step.control->kind)) return false;
  const StepControl& control = *step.control;
  return std::none_of(
      safety.step_rules.begin(), safety.step_rules.end(), [&](const StepRule& rule) {
        if (!applies(rule, control.kind, control.where)) return false;
        const bool out_of_bounds =
            rule.temperature && control.at && !keeps(*rule.temperature, *control.at);
        return rule.demand == StepDemand::never ||
               (rule.demand == StepDemand::stands_at && out_of_bounds);
      });
}

PLATEWRIGHT_BODY Duration kept_after_oven(const ScaledRecipe& scaled, const SafetyTable& safety) {
  const Recipe& recipe = *scaled.recipe;
  Duration out;
  for (auto step = recipe.steps.rbegin(); step != recipe.steps.rend() && !step->oven; ++step) {
    const auto takes = time_of(*step, scaled);
    if (takes && is_kept_safe(*step, safety)) out += takes->most;
  }
  const bool marked = std::any_of(recipe.steps.begin(), recipe.steps.end(),
                                  [](const MethodStep& step) { return step.oven; });
  return marked ? out : Duration();
}

PLATEWRIGHT_BODY std::vector<StandingFood> standing_too_long(const Production& production,
                                                             const Timeline& timeline,
                                                             const SafetyTable& safety) {
  std::vector<StandingFood> out;
  const auto limit = safety.limit("time as control, hot");
  if (!limit || !limit->within) return out;
  for (const DishPlan& dish : production.dishes) {
    const std::string& name = dish.scaled.recipe->name;
    const Duration kept = kept_after_oven(dish.scaled, safety);
    for (const TimelineEntry& entry : timeline.entries) {
      if (entry.kind != TimelineKind::pull || entry.recipe != name) continue;
      const std::chrono::minutes wait = timeline.served - entry.earliest.value_or(entry.latest);
      const Duration longest = Duration::of(Rational(wait.count()), units::minute) - kept;
      if (longest <= *limit->within) continue;
      if (out.empty() || out.back().recipe != name) out.push_back({name, longest, *limit});
    }
  }
  return out;
}

}  // namespace platewright::detail
