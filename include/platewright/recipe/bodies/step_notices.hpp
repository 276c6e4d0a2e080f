// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/recipe/step_notices.hpp.

#include <cstddef>

#include "platewright/recipe/step_notices.hpp"

namespace platewright {

PLATEWRIGHT_BODY std::vector<StepNotice> step_notices(const Recipe& recipe, const RecipeBook& book,
                                                      const SafetyTable& table,
                                                      const std::optional<Mass>& piece_weight) {
  std::vector<StepNotice> out;
  for (std::size_t i = 0; i < recipe.steps.size(); ++i) {
    const MethodStep& step = recipe.steps[i];
    if (!step.control) continue;
    const StepLimits limits = limits_of(step, recipe, book, table, piece_weight);
    detail::StepFaults faults(step, i + 1, out);
    faults.check_place(table.step_rules);
    for (const StepRule& rule : limits.rules) faults.check(rule, limits.rules);
    if (limits.thawing) faults.check_thawing(*limits.thawing);
    const auto told = std::find_if(limits.rules.begin(), limits.rules.end(), [](const auto& rule) {
      return rule.demand == StepDemand::told;
    });
    if (told != limits.rules.end()) detail::check_marinade(recipe, i, *told, book, out);
  }
  return out;
}

}  // namespace platewright
