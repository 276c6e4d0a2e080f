// SPDX-License-Identifier: MIT
#pragma once
// What any sheet would warn of, gathered once, for all commands alike.

#include <string>

#include "platewright/costing/day_text.hpp"
#include "platewright/event/event_plan.hpp"
#include "platewright/event/step_warnings.hpp"
#include "platewright/problem/body.hpp"
#include "platewright/problem/catalogue/safety.hpp"
#include "platewright/problem/problem_list.hpp"
#include "platewright/recipe/temperature_notices.hpp"

namespace platewright {

namespace detail {

std::string names_of(const std::vector<std::string>& names);

}  // namespace detail

/// The warnings of every recipe of a book about its temperatures, each at its recipe, and about its
/// steps, each at the step. It never fails.
ProblemList safety_warnings(const RecipeBook& book, const SafetyTable& table);

/// Those of a recipe as it is scaled: pieces of another weight thaw longer. It never fails.
ProblemList safety_warnings(const ScaledRecipe& scaled, const RecipeBook& book,
                            const SafetyTable& table);

/// Those of a plan's recipes, and its dishes that stand too long after the oven and food that is
/// kept too long, as its timeline has them. Throws Failure as `make_timeline` does for a step of
/// more than a year.
ProblemList safety_warnings(const Event& event, const Production& production,
                            const RecipeBook& book, const SafetyTable& table);

inline ProblemList safety_warnings(const EventPlan& plan, const SafetyTable& table) {
  return safety_warnings(plan.event(), plan.production(), plan.recipes(), table);
}

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/event/bodies/safety_warnings.hpp"
#endif
