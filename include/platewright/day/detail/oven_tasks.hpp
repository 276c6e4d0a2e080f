// SPDX-License-Identifier: MIT
#pragma once
// What a recipe asks of the ovens of a kitchen.

#include <optional>
#include <variant>
#include <vector>

#include "platewright/day/day_plan.hpp"
#include "platewright/day/detail/recipe_chain.hpp"
#include "platewright/problem/body.hpp"

namespace platewright::detail {

std::vector<OvenRoom> oven_rooms(const Workplace& workplace);

/// How many of the recipe's pans stand on one rack of each oven; 1 where no pan is named. What is
/// not known counts as none.
std::vector<std::int64_t> pans_on_racks(const RecipeChain& chain, const std::vector<Oven>& ovens);

/// The task, or what it can't be told for. `chain.ready` has to be known; there is an oven at
/// least.
std::variant<OvenTask, NotSaid> oven_task(const RecipeChain& chain, const std::vector<Oven>& ovens);

}  // namespace platewright::detail

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/day/bodies/detail/oven_tasks.hpp"
#endif
