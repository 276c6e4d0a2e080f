// SPDX-License-Identifier: MIT
#pragma once
// The kinds of food in a recipe that have a minimum temperature.

#include <string>
#include <vector>

#include "platewright/problem/body.hpp"
#include "platewright/recipe/recipe_book.hpp"
#include "platewright/safety/food_kind.hpp"

namespace platewright {

/// One kind of food, and the ingredients that are of it.
struct FoodOfKind {
  FoodKind kind;
  std::vector<std::string> ingredients;
};

struct RecipeSafety {
  std::vector<FoodOfKind> kinds;  ///< in the order of the lines
  /// Ingredients of which the book does not say what kind they are. Whether one of them comes from
  /// an animal can't be told from its name.
  std::vector<std::string> not_stated;

  /// No minimum can be named, and it can't be ruled out that there is one.
  bool not_known() const { return kinds.empty() && !not_stated.empty(); }
};

/// The kinds among the recipe's own lines. Where there are none, and the recipe is cooked until a
/// temperature inside, those of the nearest recipes that it is made of: a pie is cooked with its
/// filling, while a stock in a gravy has been cooked before. It never fails.
RecipeSafety safety_of(const Recipe& recipe, const RecipeBook& book);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/recipe/bodies/recipe_safety.hpp"
#endif
