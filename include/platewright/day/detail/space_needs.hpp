// SPDX-License-Identifier: MIT
#pragma once
// Hobs, hot box and cold room: what stands there at once.

#include <optional>
#include <string>
#include <vector>

#include "platewright/day/day_plan.hpp"
#include "platewright/day/detail/recipe_chain.hpp"
#include "platewright/problem/body.hpp"

namespace platewright::detail {

struct SpaceUse {
  Minute begins = 0;
  Minute ends = 0;
  Rational takes;
  std::string recipe;
};

/// Pots on the fire: as many as the step says; else one for each of the recipe's vessels, where it
/// is not cooked in the oven, else one.
Rational hobs_for(const Work& work, const ScaledRecipe& scaled);

bool stands_in(const Work& work, Space space);

/// Places of the space that the recipe's pans take; nothing, and a word of it, where that is not
/// known.
std::optional<Rational> places_for(const RecipeChain& chain, const PanSpace& space, DayPlan& plan);

std::vector<SpaceUse> uses_of(Space space, const std::optional<PanSpace>& room,
                              const std::vector<RecipeChain>& chains, DayPlan& plan);

void add_recipes_at(Minute minute, const std::vector<SpaceUse>& uses, SpaceShort& out);

/// Each stretch of time in which more is asked for than there is.
void find_shortage(Space space, const Rational& there, const std::vector<SpaceUse>& uses,
                   DayPlan& plan);

/// What the workplace does not say how much it has of is not looked at.
void find_shortages(const std::vector<RecipeChain>& chains, DayPlan& plan);

}  // namespace platewright::detail

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/day/bodies/detail/space_needs.hpp"
#endif
