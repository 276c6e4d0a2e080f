// SPDX-License-Identifier: MIT
#pragma once
// Recipes that refer to each other by name.

#include <algorithm>
#include <optional>
#include <string>
#include <string_view>
#include <utility>

#include "platewright/problem/body.hpp"
#include "platewright/recipe/by_name.hpp"
#include "platewright/recipe/ingredient.hpp"
#include "platewright/recipe/recipe.hpp"

namespace platewright {

/// Every recipe and every ingredient of a book, by name. A copy shares them, and costs little.
struct RecipeBook {
  ByName<Recipe> recipes;
  ByName<Ingredient> ingredients;

  void add(Recipe recipe);
  void add(Ingredient ingredient);

  const Recipe* find_recipe(const std::string& name) const&;
  const Ingredient* find_ingredient(const std::string& name) const&;

  /// The recipe of that name. Throws Failure with the nearest names.
  const Recipe& recipe(const std::string& name) const&;
  /// The ingredient of that name. Throws Failure with the nearest names.
  const Ingredient& ingredient(const std::string& name) const&;

  /// What a line's name stands for: a recipe, or else an ingredient. Null where it is the other, or
  /// nothing that the book has.
  const Recipe* recipe_of(const RecipeLine& line) const& { return find_recipe(line.name); }
  const Ingredient* ingredient_of(const RecipeLine& line) const&;

  // Nothing of a book that is gone.
  const Recipe* find_recipe(const std::string&) && = delete;
  const Ingredient* find_ingredient(const std::string&) && = delete;
  const Recipe& recipe(const std::string&) && = delete;
  const Ingredient& ingredient(const std::string&) && = delete;
  const Recipe* recipe_of(const RecipeLine&) && = delete;
  const Ingredient* ingredient_of(const RecipeLine&) && = delete;
};

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/recipe/bodies/recipe_book.hpp"
#endif
