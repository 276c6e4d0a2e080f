// SPDX-License-Identifier: MIT
#pragma once
// What the tested pieces of a recipe take up in a vessel.

#include <optional>

#include "platewright/recipe/piece_line.hpp"

namespace platewright {

/// The volume of one tested piece: its weight by the ingredient's own density. Nothing where the
/// recipe names no pieces or the density is not known.
inline std::optional<Volume> piece_volume(const Recipe& recipe, const RecipeBook& book) {
  const RecipeLine* line = piece_line(recipe, book);
  const Ingredient* ingredient = line == nullptr ? nullptr : book.ingredient_of(*line);
  const Unit& millilitre = built_in_unit("millilitre");
  if (ingredient == nullptr || !weighs_by(ingredient->weights, millilitre)) return std::nullopt;
  return to_volume(convert(recipe.tested->weight, millilitre, ingredient->weights).amount);
}

}  // namespace platewright
