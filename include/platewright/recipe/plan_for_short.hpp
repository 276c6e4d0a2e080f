// SPDX-License-Identifier: MIT
#pragma once
// As much as an ingredient that is on hand allows.

#include <string>

#include "platewright/problem/body.hpp"
#include "platewright/recipe/taken.hpp"

namespace platewright {

/// The batch that uses up `on_hand` of the ingredient (or recipe) `name`, counted as it comes from
/// the store: on hand over what the tested batch and its sub-recipes take together. A recipe of
/// whole pieces makes as many whole ones as there is enough for. Throws Failure as `taken_of` does,
/// and where there is not enough for one piece.
ScalePlan plan_for_short(const Recipe& recipe, const std::string& name, const Amount& on_hand,
                         const RecipeBook& book);

/// As much as a weight on hand of the main ingredient (the recipe's first line) gives, counted as
/// that line is written; where its sub-recipes take of the ingredient too, that is counted with it.
/// Nothing is rounded, since the meat is there. Throws Failure where that line is not a weight, and
/// as `taken_of` does.
ScalePlan plan_for_weight_on_hand(const Recipe& recipe, const Mass& on_hand,
                                  const RecipeBook& book);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/recipe/bodies/plan_for_short.hpp"
#endif
