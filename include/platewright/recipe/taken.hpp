// SPDX-License-Identifier: MIT
#pragma once
// What one tested batch takes of an ingredient, with what is in its sub-recipes.

#include <optional>
#include <string>
#include <vector>

#include "platewright/problem/body.hpp"
#include "platewright/recipe/nesting.hpp"
#include "platewright/recipe/recipe_book.hpp"
#include "platewright/recipe/scaled_recipe.hpp"

namespace platewright {

struct Taken {
  Rational number;                  ///< in the unit asked for
  std::vector<std::string> takers;  ///< the recipes whose own lines take it
};

/// What one tested batch of the recipe takes of the ingredient (or recipe) `name` in `unit`: its
/// own lines and those of its sub-recipes at any depth, what is lost of these counted in; the upper
/// end of a range, so that there is enough. Counted at `stage`, or as it comes from the store where
/// none is named. Throws Failure for a name that no line has, for a line that does not follow the
/// size of the batch, for a sub-recipe that is made in whole batches or pieces, where a weight is
/// missing to compare amounts, and for recipes that use each other in a circle.
Taken taken_of(const Recipe& recipe, const std::string& name, const Unit& unit,
               const RecipeBook& book, std::optional<Stage> stage = std::nullopt);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/recipe/bodies/taken.hpp"
#endif
