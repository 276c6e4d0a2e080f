// SPDX-License-Identifier: MIT
#pragma once
// Ingredients from the rows of the tables of yields and weights.

#include "platewright/recipe/ingredient.hpp"
#include "platewright/safety/food_kind.hpp"
#include "platewright/yield/yield_table.hpp"

namespace platewright {

/// The ingredient with the yield of a cut, and what food that is.
inline Ingredient with_row(Ingredient ingredient, const Cut& cut) {
  ingredient.yield_name = cut.name;
  ingredient.ladder = cut.ladder;
  ingredient.is_cut = true;
  ingredient.safety = cut.safety;
  ingredient.species = cut.species;
  return ingredient;
}

/// The same with a row of produce.
inline Ingredient with_row(Ingredient ingredient, const Produce& produce) {
  ingredient.yield_name = key_of(produce);
  ingredient.ladder = ladder_of(produce);
  ingredient.safety = FoodKind::without_minimum();
  return ingredient;
}

/// The same with a row of grains.
inline Ingredient with_row(Ingredient ingredient, const Grain& grain) {
  ingredient.yield_name = grain.name;
  ingredient.ladder = ladder_of(grain);
  ingredient.safety = FoodKind::without_minimum();
  return ingredient;
}

/// The ingredient with the weights of measures and pieces that the table has under `food`; without
/// any where it has none.
inline Ingredient with_weights(Ingredient ingredient, const WeightTable& table,
                               std::string_view food) {
  if (const IngredientWeights* known = table.find(food)) ingredient.weights = *known;
  ingredient.weights.name = ingredient.name;
  ingredient.prepared_weights = table.prepared(food);
  return ingredient;
}

}  // namespace platewright
