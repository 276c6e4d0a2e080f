// SPDX-License-Identifier: MIT
#pragma once
// The allergens of a recipe, up through all that it is made of.

#include <map>
#include <set>
#include <string>
#include <vector>

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
inline RecipeAllergens allergens_of(const Recipe& recipe, const RecipeBook& book,
                                    const AllergenTable& table = {}) {
  std::map<std::string, std::set<std::string>> found;
  std::map<std::string, std::set<std::string>> traces;
  std::set<std::string> not_stated;
  std::set<std::string> seen{recipe.name};
  std::vector<const Recipe*> open{&recipe};
  while (!open.empty()) {
    const Recipe* current = open.back();
    open.pop_back();
    for (const RecipeLine& line : current->lines) {
      if (const Recipe* below = book.recipe_of(line)) {
        if (seen.insert(line.name).second) open.push_back(below);
        continue;
      }
      const Ingredient* ingredient = book.ingredient_of(line);
      if (ingredient != nullptr) {
        const auto& said = ingredient->may_contain;
        for (const std::string& key : table.with_implied({said.begin(), said.end()})) {
          traces[key].insert(line.name);
        }
      }
      if (ingredient == nullptr || !ingredient->allergens) {
        not_stated.insert(line.name);
        continue;
      }
      const auto& stated = *ingredient->allergens;
      for (const std::string& key : table.with_implied({stated.begin(), stated.end()})) {
        found[key].insert(line.name);
      }
    }
  }
  RecipeAllergens out;
  for (const auto& [key, names] : found) out.found.push_back({key, {names.begin(), names.end()}});
  for (const auto& [key, names] : traces) {
    if (found.count(key) == 0) out.may_contain.push_back({key, {names.begin(), names.end()}});
  }
  out.not_stated.assign(not_stated.begin(), not_stated.end());
  return out;
}

}  // namespace platewright
