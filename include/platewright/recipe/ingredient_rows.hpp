// SPDX-License-Identifier: MIT
#pragma once
// Ingredients from the rows of the tables of yields and weights.

#include "platewright/problem/body.hpp"
#include "platewright/recipe/ingredient.hpp"
#include "platewright/safety/food_kind.hpp"
#include "platewright/yield/yield_table.hpp"

namespace platewright {

/// The ingredient with the yield of a cut, and what food that is.
Ingredient with_row(Ingredient ingredient, const Cut& cut);

/// The same with a row of produce.
Ingredient with_row(Ingredient ingredient, const Produce& produce);

/// The same with a row of grains.
Ingredient with_row(Ingredient ingredient, const Grain& grain);

/// The ingredient with the weights of measures and pieces that the table has under `food`; without
/// any where it has none.
Ingredient with_weights(Ingredient ingredient, const WeightTable& table, std::string_view food);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/recipe/bodies/ingredient_rows.hpp"
#endif
