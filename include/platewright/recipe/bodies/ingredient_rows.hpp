// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/recipe/ingredient_rows.hpp.

#include "platewright/recipe/ingredient_rows.hpp"

namespace platewright {

PLATEWRIGHT_BODY Ingredient with_row(Ingredient ingredient, const Cut& cut) {
  ingredient.yield_name = cut.name;
  ingredient.ladder = cut.ladder;
  ingredient.is_cut = true;
  ingredient.safety = cut.safety;
  ingredient.species = cut.species;
  return ingredient;
}

PLATEWRIGHT_BODY Ingredient with_row(Ingredient ingredient, const Produce& produce) {
  ingredient.yield_name = key_of(produce);
  ingredient.ladder = ladder_of(produce);
  ingredient.safety = FoodKind::without_minimum();
  return ingredient;
}

PLATEWRIGHT_BODY Ingredient with_row(Ingredient ingredient, const Grain& grain) {
  ingredient.yield_name = grain.name;
  ingredient.ladder = ladder_of(grain);
  ingredient.safety = FoodKind::without_minimum();
  return ingredient;
}

PLATEWRIGHT_BODY Ingredient with_weights(Ingredient ingredient, const WeightTable& table,
                                         std::string_view food) {
  if (const IngredientWeights* known = table.find(food)) ingredient.weights = *known;
  ingredient.weights.name = ingredient.name;
  ingredient.prepared_weights = table.prepared(food);
  return ingredient;
}

}  // namespace platewright
