// SPDX-License-Identifier: MIT
#pragma once
// Recipes that are made ahead: how they are kept, and until when.

#include <chrono>
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "platewright/event/walk_back.hpp"
#include "platewright/problem/body.hpp"

namespace platewright::detail {

using RecipeClocksByName = std::map<std::string, RecipeClocks>;

/// The last whole day of a rule that counts the day it is made as the first.
std::chrono::local_days last_day(const std::chrono::local_days& made, const Duration& within);

std::optional<StepRule> dated_rule(const StepControl& control, const SafetyTable& safety);

/// The first step of a recipe that holds it cold; none where no step does.
const MethodStep* cold_step(const Recipe& recipe);

/// When it is made, at the soonest: when it begins to be chilled, or, where no step does that, to
/// be held cold; none where those steps take no time and so are not planned.
std::optional<Instant> made_at(const Recipe& recipe, const Timeline& timeline);

void add_kept(const Recipe& recipe, const Instant& last_use, const Timeline& timeline,
              const SafetyTable& safety, std::vector<KeptFood>& out);

/// When the last of those that use a sub-recipe needs it.
Instant last_needed(const SubRecipePlan& plan, const RecipeClocksByName& clocks);

/// Dishes first, as they are used last.
std::vector<KeptFood> kept_foods(const Production& production, const RecipeClocksByName& clocks,
                                 const Timeline& timeline, const SafetyTable& safety);

/// Cooked, and neither chilled nor held by any step.
bool keeping_is_not_said(const Recipe& recipe);

/// A sub-recipe is ready for the first that uses it, and waits for the last. Food that is neither
/// hot nor cold keeps for the hours of FDA Food Code 2022, 3-501.19.
std::vector<WaitingFood> waiting_foods(const Production& production,
                                       const RecipeClocksByName& clocks, const SafetyTable& safety);

}  // namespace platewright::detail

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/event/bodies/kept_food.hpp"
#endif
