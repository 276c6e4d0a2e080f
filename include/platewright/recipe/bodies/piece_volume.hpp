// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/recipe/piece_volume.hpp.

#include "platewright/recipe/piece_volume.hpp"

namespace platewright {

PLATEWRIGHT_BODY std::optional<Volume> piece_volume(const Recipe& recipe, const RecipeBook& book) {
  const RecipeLine* line = piece_line(recipe, book);
  const Ingredient* ingredient = line == nullptr ? nullptr : book.ingredient_of(*line);
  const Unit& millilitre = built_in_unit("millilitre");
  if (ingredient == nullptr || !weighs_by(ingredient->weights, millilitre)) return std::nullopt;
  return to_volume(convert(recipe.tested->weight, millilitre, ingredient->weights).amount);
}

}  // namespace platewright
