// SPDX-License-Identifier: MIT
#pragma once
// What the lines of a recipe come to in its tested batch.

#include <optional>
#include <vector>

#include "platewright/problem/body.hpp"
#include "platewright/problem/catalogue/recipes.hpp"
#include "platewright/recipe/recipe_book.hpp"

namespace platewright {

/// What a line's amount weighs; nothing where it is a share or to taste, or where the book has no
/// figure that leads to a weight.
std::optional<Mass> tested_weight(const RecipeLine& line, const RecipeBook& book);

/// The lines that a share is taken of, by their places in the recipe. Throws Failure where a name
/// is none of a line that weighs something.
std::vector<std::size_t> lines_shared(const WeightShare& share, const Recipe& recipe,
                                      const RecipeBook& book);

/// The weight of the tested batch that a share is taken of. Throws Failure as `lines_shared` does.
Mass weight_shared(const WeightShare& share, const Recipe& recipe, const RecipeBook& book);

/// The line's amount in one tested batch: as written, or what its share of other lines comes to.
/// Throws Failure, at the line's place, for a share of what has no weight.
LineAmount tested_amount(const RecipeLine& line, const Recipe& recipe, const RecipeBook& book);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/recipe/bodies/tested_amount.hpp"
#endif
