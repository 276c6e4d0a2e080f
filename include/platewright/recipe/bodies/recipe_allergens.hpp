// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/recipe/recipe_allergens.hpp.

#include <map>
#include <set>

#include "platewright/recipe/recipe_allergens.hpp"

namespace platewright {

PLATEWRIGHT_BODY RecipeAllergens allergens_of(const Recipe& recipe, const RecipeBook& book,
                                              const AllergenTable& table) {
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
