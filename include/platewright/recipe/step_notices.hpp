// SPDX-License-Identifier: MIT
#pragma once
// The steps of a recipe that go against a rule of the table.

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "platewright/recipe/detail/step_faults.hpp"

namespace platewright {

/// The notices of one recipe, in the order of its steps. Every sheet and every check of a book says
/// these and no others; a step that does not say its kind has none. `piece_weight` is that of the
/// pieces that are cooked, if not of the tested ones. It never fails.
inline std::vector<StepNotice> step_notices(const Recipe& recipe, const RecipeBook& book,
                                            const SafetyTable& table,
                                            const std::optional<Mass>& piece_weight = {}) {
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
