// SPDX-License-Identifier: MIT
#pragma once
// The kinds of food in a recipe that have a minimum temperature.

#include <algorithm>
#include <set>
#include <string>
#include <vector>

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

namespace detail {

/// `met` holds the names that are in `out` already, or need not be.
inline void add_kinds(const Recipe& recipe, const RecipeBook& book, std::set<std::string>& met,
                      RecipeSafety& out) {
  for (const RecipeLine& line : recipe.lines) {
    const Ingredient* ingredient = book.ingredient_of(line);
    if (ingredient == nullptr || !met.insert(line.name).second) continue;
    if (!ingredient->safety) {
      out.not_stated.push_back(line.name);
      continue;
    }
    const FoodKind& kind = *ingredient->safety;
    if (!kind.has_minimum()) continue;
    auto of_kind = std::find_if(out.kinds.begin(), out.kinds.end(),
                                [&](const FoodOfKind& known) { return known.kind == kind; });
    if (of_kind == out.kinds.end()) of_kind = out.kinds.insert(out.kinds.end(), {kind, {}});
    of_kind->ingredients.push_back(line.name);
  }
}

}  // namespace detail

/// The kinds among the recipe's own lines. Where there are none, and the recipe is cooked until a
/// temperature inside, those of the nearest recipes that it is made of: a pie is cooked with its
/// filling, while a stock in a gravy has been cooked before. It never fails.
inline RecipeSafety safety_of(const Recipe& recipe, const RecipeBook& book) {
  RecipeSafety out;
  std::set<std::string> seen{recipe.name};
  std::set<std::string> met;
  std::vector<const Recipe*> level{&recipe};
  while (!level.empty() && out.kinds.empty()) {
    std::vector<const Recipe*> below;
    for (const Recipe* current : level) {
      detail::add_kinds(*current, book, met, out);
      for (const RecipeLine& line : current->lines) {
        const Recipe* next = book.recipe_of(line);
        if (next != nullptr && seen.insert(line.name).second) below.push_back(next);
      }
    }
    if (!pull_temperature(recipe)) break;
    level = std::move(below);
  }
  return out;
}

}  // namespace platewright
