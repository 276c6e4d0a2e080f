// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/recipe/piece_line.hpp.

#include "platewright/recipe/piece_line.hpp"

namespace platewright {

PLATEWRIGHT_BODY const RecipeLine* piece_line(const Recipe& recipe, const RecipeBook& book) {
  if (!recipe.tested || recipe.lines.empty()) return nullptr;
  for (const RecipeLine& line : recipe.lines) {
    const Ingredient* ingredient = book.ingredient_of(line);
    if (ingredient != nullptr && ingredient->is_cut) return &line;
  }
  return &recipe.lines.front();
}

}  // namespace platewright
