// SPDX-License-Identifier: MIT
#pragma once
// Recipes that refer to each other by name.

#include <algorithm>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "platewright/recipe/ingredient.hpp"
#include "platewright/recipe/recipe.hpp"

namespace platewright {

/// Every recipe and every ingredient of a book, by name.
struct RecipeBook {
  std::map<std::string, Recipe> recipes;
  std::map<std::string, Ingredient> ingredients;

  void add(Recipe recipe) { recipes.insert_or_assign(recipe.name, std::move(recipe)); }
  void add(Ingredient ingredient) {
    ingredients.insert_or_assign(ingredient.name, std::move(ingredient));
  }

  const Recipe* find_recipe(const std::string& name) const& {
    const auto found = recipes.find(name);
    return found == recipes.end() ? nullptr : &found->second;
  }
  const Ingredient* find_ingredient(const std::string& name) const& {
    const auto found = ingredients.find(name);
    return found == ingredients.end() ? nullptr : &found->second;
  }

  /// The recipe of that name. Throws Failure with the nearest names.
  const Recipe& recipe(const std::string& name) const& {
    if (const Recipe* found = find_recipe(name)) return *found;
    std::vector<std::string> names;
    add_names_of(recipes, names);
    throw Failure(problems::name_unknown("recipe", name, names, "add the recipe's file to `with`"));
  }
  /// The ingredient of that name. Throws Failure with the nearest names.
  const Ingredient& ingredient(const std::string& name) const& {
    if (const Ingredient* found = find_ingredient(name)) return *found;
    std::vector<std::string> names;
    add_names_of(ingredients, names);
    add_names_of(recipes, names);
    throw Failure(problems::name_unknown("ingredient", name, names,
                                         "add it to the larder, or name the file that holds it, "
                                         "as in `with: [larder.yaml]`"));
  }

  /// What a line's name stands for: a recipe, or else an ingredient. Null where it is the other, or
  /// nothing that the book has.
  const Recipe* recipe_of(const RecipeLine& line) const& { return find_recipe(line.name); }
  const Ingredient* ingredient_of(const RecipeLine& line) const& {
    return recipe_of(line) == nullptr ? find_ingredient(line.name) : nullptr;
  }

  // Nothing of a book that is gone.
  const Recipe* find_recipe(const std::string&) && = delete;
  const Ingredient* find_ingredient(const std::string&) && = delete;
  const Recipe& recipe(const std::string&) && = delete;
  const Ingredient& ingredient(const std::string&) && = delete;
  const Recipe* recipe_of(const RecipeLine&) && = delete;
  const Ingredient* ingredient_of(const RecipeLine&) && = delete;
};

}  // namespace platewright
