// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/recipe/portions_by_yield.hpp.

#include <algorithm>

#include "platewright/recipe/portions_by_yield.hpp"

namespace platewright {

PLATEWRIGHT_BODY std::optional<Rational> portions_by_yield(const Recipe& recipe,
                                                           const RecipeBook& book) {
  const RecipeLine* line = piece_line(recipe, book);
  const auto& portion = recipe.makes.portion;
  if (line == nullptr || !portion || recipe.makes.of_whole_dish ||
      portion->dimension() != UnitDimension::mass || portion->number <= 0) {
    return std::nullopt;
  }
  const Ingredient* cut = book.ingredient_of(*line);
  if (cut == nullptr || !cut->is_cut || cut->ladder.rungs().empty()) return std::nullopt;
  const Mass served = recipe.tested->weight * (recipe.tested->count * cut->ladder.yield());
  return served / to_mass(*portion);
}

PLATEWRIGHT_BODY std::optional<Rational> counted_portions(const Recipe& recipe,
                                                          const RecipeBook& book) {
  const auto& written = recipe.makes.portions;
  const std::optional<Rational> by_yield = portions_by_yield(recipe, book);
  return written && by_yield ? std::min(*written, *by_yield) : written;
}

}  // namespace platewright
