// SPDX-License-Identifier: MIT
#pragma once
// The allergens of a recipe, up through all that it is made of.

#include <string>
#include <vector>

#include "platewright/problem/body.hpp"
#include "platewright/recipe/recipe_book.hpp"
#include "platewright/safety/allergens.hpp"

namespace platewright {

/// One allergen and the ingredients that bring it.
struct AllergenFound {
  std::string key;
  std::vector<std::string> ingredients;  ///< by name
};

struct RecipeAllergens {
  std::vector<AllergenFound> found;  ///< by key
  /// What a label says that it may contain, by key; none of `found`.
  std::vector<AllergenFound> may_contain = {};
  /// Ingredients whose allergens the book does not state, and names it has nothing under. While
  /// there is one, no one can say what the recipe is free of.
  std::vector<std::string> not_stated;
};

/// Everything that is in `recipe`, sub-recipes to any depth, lines to taste included. With what
/// comes with an allergen by the table (wheat is a cereal with gluten). It never fails: what can't
/// be looked up is reported as not stated.
RecipeAllergens allergens_of(const Recipe& recipe, const RecipeBook& book,
                             const AllergenTable& table = {});

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/recipe/bodies/recipe_allergens.hpp"
#endif
