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
    for (const auto& [other, recipe] : recipes) names.push_back(other);
    throw Failure(problems::name_unknown("recipe", name, names, "add the recipe's file to `with`"));
  }
  /// The ingredient of that name. Throws Failure with the nearest names.
  const Ingredient& ingredient(const std::string& name) const& {
    if (const Ingredient* found = find_ingredient(name)) return *found;
    std::vector<std::string> names;
    for (const auto& [other, ingredient] : ingredients) names.push_back(other);
    for (const auto& [other, recipe] : recipes) names.push_back(other);
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

namespace detail {

/// Walks down the sub-recipes of one recipe; `trail` holds the way from the start.
inline std::optional<std::vector<std::string>> cycle_from(const RecipeBook& book,
                                                          const std::string& name,
                                                          std::vector<std::string>& trail,
                                                          std::map<std::string, bool>& finished) {
  if (finished[name]) return std::nullopt;
  const auto seen = std::find(trail.begin(), trail.end(), name);
  if (seen != trail.end()) {
    std::vector<std::string> cycle(seen, trail.end());
    cycle.push_back(name);
    return cycle;
  }
  trail.push_back(name);
  if (const Recipe* recipe = book.find_recipe(name)) {
    for (const RecipeLine& line : recipe->lines) {
      if (book.recipe_of(line) == nullptr) continue;
      if (auto cycle = cycle_from(book, line.name, trail, finished)) return cycle;
    }
  }
  trail.pop_back();
  finished[name] = true;
  return std::nullopt;
}

}  // namespace detail

/// A circle of recipes that use each other, first name repeated at the end; nothing where there is
/// none.
inline std::optional<std::vector<std::string>> find_cycle(const RecipeBook& book) {
  std::map<std::string, bool> finished;
  for (const auto& [name, recipe] : book.recipes) {
    std::vector<std::string> trail;
    if (auto cycle = detail::cycle_from(book, name, trail, finished)) return cycle;
  }
  return std::nullopt;
}

}  // namespace platewright
