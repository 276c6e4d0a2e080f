// SPDX-License-Identifier: MIT
#pragma once
// Everything that a kitchen has written down.

#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "platewright/book/tables.hpp"
#include "platewright/costing/price_list.hpp"
#include "platewright/event/event.hpp"
#include "platewright/kitchen/kitchen.hpp"
#include "platewright/kitchen/workplace.hpp"
#include "platewright/recipe/recipe_book.hpp"

namespace platewright {

/// One book, as it was written: by a program, or in the files that `read_book` reads. Nothing in it
/// follows from anything else in it; see `check` for what can't be so.
struct Book {
  MeasuringSystem measures = MeasuringSystem::us;
  Tables tables = built_in_tables();  ///< with the book's own rows on top
  RecipeBook recipes = {};            ///< recipes and ingredients
  PriceList prices = {};
  std::vector<Event> events = {};
  std::vector<std::string> files = {};            ///< in the order they were read
  std::vector<std::string> main_recipes = {};     ///< of the files that were named, not of `with`
  std::optional<Kitchen> kitchen = std::nullopt;  ///< as declared; see `kitchen_for`
  std::optional<Workplace> workplace = std::nullopt;  ///< ovens, people; see `plan_day`

  void add(Recipe recipe) { recipes.add(std::move(recipe)); }
  /// An ingredient that has no price.
  void add(Ingredient ingredient) { recipes.add(std::move(ingredient)); }
  /// The purchase becomes the last of the ingredient's offers; the first one is preferred.
  void add(Ingredient ingredient, Purchase purchase) {
    prices.add(ingredient.name, std::move(purchase));
    recipes.add(std::move(ingredient));
  }
};

}  // namespace platewright
