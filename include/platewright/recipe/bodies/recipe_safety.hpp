// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/recipe/recipe_safety.hpp.

#include <algorithm>
#include <set>

#include "platewright/recipe/recipe_safety.hpp"

namespace platewright {

namespace detail {

/// `met` holds the names that are in `out` already, or need not be.
PLATEWRIGHT_BODY void add_kinds(const Recipe& recipe, const RecipeBook& book,
                                std::set<std::string>& met, RecipeSafety& out) {
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

PLATEWRIGHT_BODY RecipeSafety safety_of(const Recipe& recipe, const RecipeBook& book) {
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
