// SPDX-License-Identifier: MIT
#pragma once
// Dishes that stand too long between the oven and the serving.

#include <vector>

#include "platewright/event/walk_back.hpp"
#include "platewright/problem/body.hpp"

namespace platewright::detail {

/// Whether the rules for the step keep the food safe while it goes on: it is held, chilled or
/// reheated, and says nothing against them.
bool is_kept_safe(const MethodStep& step, const SafetyTable& safety);

/// The time of the steps behind the oven in which the food is kept hot, or cooled and reheated.
Duration kept_after_oven(const ScaledRecipe& scaled, const SafetyTable& safety);

/// By FDA Food Code 2022, 3-501.19. What a step behind the oven says of holding, cooling and
/// reheating is taken off; of the rest of the time the book does not say how the food is kept.
std::vector<StandingFood> standing_too_long(const Production& production, const Timeline& timeline,
                                            const SafetyTable& safety);

}  // namespace platewright::detail

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/event/bodies/standing_food.hpp"
#endif
