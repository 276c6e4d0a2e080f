// SPDX-License-Identifier: MIT
#pragma once
// The portions that whole pieces serve by the yield of their cut, beside those the recipe names.

#include <algorithm>
#include <optional>

#include "platewright/recipe/piece_line.hpp"

namespace platewright {

/// Weight of the tested pieces as purchased x yield of the cut / weight of a portion. Nothing where
/// no pieces of a cut were tested, no weight of a portion is named, the portion holds more than the
/// meat, or no yield of the cut is known.
inline std::optional<Rational> portions_by_yield(const Recipe& recipe, const RecipeBook& book) {
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

/// The portions that one tested batch is counted on for: those the recipe names or, where they are
/// fewer, those that its meat serves by the yield of the cut, so that no guest goes short.
inline std::optional<Rational> counted_portions(const Recipe& recipe, const RecipeBook& book) {
  const auto& written = recipe.makes.portions;
  const std::optional<Rational> by_yield = portions_by_yield(recipe, book);
  return written && by_yield ? std::min(*written, *by_yield) : written;
}

}  // namespace platewright
