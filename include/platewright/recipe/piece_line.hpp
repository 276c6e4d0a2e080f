// SPDX-License-Identifier: MIT
#pragma once
// Which line of a recipe its whole pieces are, and at which stage a line is written.

#include "platewright/problem/body.hpp"
#include "platewright/recipe/recipe_book.hpp"

namespace platewright {

/// The line that the tested pieces of a recipe are: the first one that is a cut, else the first
/// one; none in a recipe that names no pieces.
const RecipeLine* piece_line(const Recipe& recipe, const RecipeBook& book);

const RecipeLine* piece_line(const Recipe&&, const RecipeBook&) = delete;

/// At which stage the line's amount is written.
inline Stage stage_of(const RecipeLine& line, const Ingredient& ingredient) {
  return line.stage.value_or(usual_stage(ingredient));
}

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/recipe/bodies/piece_line.hpp"
#endif
