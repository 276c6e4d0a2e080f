// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/recipe/recipe_book.hpp.

#include <vector>

#include "platewright/recipe/recipe_book.hpp"

namespace platewright {

PLATEWRIGHT_BODY void RecipeBook::add(Recipe recipe) {
  std::string name = recipe.name;
  recipes.insert_or_assign(std::move(name), std::move(recipe));
}

PLATEWRIGHT_BODY void RecipeBook::add(Ingredient ingredient) {
  std::string name = ingredient.name;
  ingredients.insert_or_assign(std::move(name), std::move(ingredient));
}

PLATEWRIGHT_BODY const Recipe* RecipeBook::find_recipe(const std::string& name) const& {
  const auto found = recipes.find(name);
  return found == recipes.end() ? nullptr : &(*found).second;
}

PLATEWRIGHT_BODY const Ingredient* RecipeBook::find_ingredient(const std::string& name) const& {
  const auto found = ingredients.find(name);
  return found == ingredients.end() ? nullptr : &(*found).second;
}

PLATEWRIGHT_BODY const Recipe& RecipeBook::recipe(const std::string& name) const& {
  if (const Recipe* found = find_recipe(name)) return *found;
  std::vector<std::string> names;
  add_names_of(recipes, names);
  throw Failure(problems::name_unknown("recipe", name, names, "add the recipe's file to `with`"));
}

PLATEWRIGHT_BODY const Ingredient& RecipeBook::ingredient(const std::string& name) const& {
  if (const Ingredient* found = find_ingredient(name)) return *found;
  std::vector<std::string> names;
  add_names_of(ingredients, names);
  add_names_of(recipes, names);
  throw Failure(problems::name_unknown("ingredient", name, names,
                                       "add it to the larder, or name the file that holds it, "
                                       "as in `with: [larder.yaml]`"));
}

PLATEWRIGHT_BODY const Ingredient* RecipeBook::ingredient_of(const RecipeLine& line) const& {
  return recipe_of(line) == nullptr ? find_ingredient(line.name) : nullptr;
}

}  // namespace platewright
