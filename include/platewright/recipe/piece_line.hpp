// SPDX-License-Identifier: MIT
#pragma once
// Which line of a recipe its whole pieces are, and at which stage a line is written.

#include "platewright/recipe/recipe_book.hpp"

namespace platewright {

/// The line that the tested pieces of a recipe are: the first one that is a cut, else the first
/// one; none in a recipe that names no pieces.
inline const RecipeLine* piece_line(const Recipe& recipe, const RecipeBook& book) {
  if (!recipe.tested || recipe.lines.empty()) return nullptr;
  for (const RecipeLine& line : recipe.lines) {
    const Ingredient* ingredient = book.ingredient_of(line);
    if (ingredient != nullptr && ingredient->is_cut) return &line;
  }
  return &recipe.lines.front();
}

const RecipeLine* piece_line(const Recipe&&, const RecipeBook&) = delete;

/// At which stage the line's amount is written.
inline Stage stage_of(const RecipeLine& line, const Ingredient& ingredient) {
  return line.stage.value_or(usual_stage(ingredient));
}

}  // namespace platewright
