#pragma once
// Everything that was read from a user's files, checked and linked.

#include <optional>
#include <string>
#include <vector>

#include "platewright/book/tables.hpp"
#include "platewright/costing/price_list.hpp"
#include "platewright/event/event.hpp"
#include "platewright/kitchen/kitchen.hpp"
#include "platewright/recipe/recipe_book.hpp"

namespace platewright {

/// One book: the files named on the command line and all files that they name.
struct Book {
  MeasuringSystem measures = MeasuringSystem::us;
  Tables tables;       ///< the built-in tables with the book's own rows on top
  RecipeBook recipes;  ///< recipes and ingredients
  PriceList prices;
  std::vector<Event> events;
  std::vector<std::string> files;         ///< in the order they were read
  std::vector<std::string> main_recipes;  ///< recipes of the files that were named, not of `with`
  std::optional<Kitchen> kitchen = std::nullopt;  ///< as declared; see `kitchen_for`
};

}  // namespace platewright
