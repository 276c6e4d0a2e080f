#pragma once
// What guests are told of each dish before they eat it: allergens, and food that is undercooked.

#include <algorithm>
#include <set>
#include <string>
#include <utility>
#include <vector>

#include "platewright/event/event.hpp"
#include "platewright/event/production.hpp"
#include "platewright/recipe/recipe_allergens.hpp"
#include "platewright/recipe/recipe_safety.hpp"
#include "platewright/safety/pull_temperature.hpp"

namespace platewright {

/// Ingredients of one kind that come out of the oven below its minimum.
struct UndercookedFood {
  std::vector<std::string> ingredients;
  PullCheck check;
};

/// A temperature inside of which no one can say whether it is enough.
struct UnknownMinimum {
  std::vector<std::string> ingredients;
  Temperature pull = Temperature::celsius(0);
};

struct DishNotice {
  std::string dish;
  RecipeAllergens allergens;
  std::vector<UndercookedFood> undercooked;
  std::vector<UnknownMinimum> not_known;
};

namespace detail {

inline void add_temperatures(const Recipe& recipe, const RecipeBook& book, const SafetyTable& table,
                             DishNotice& out) {
  const auto pull = pull_temperature(recipe);
  if (!pull) return;
  const RecipeSafety safety = safety_of(recipe, book);
  if (safety.not_known()) out.not_known.push_back({safety.not_stated, *pull});
  for (const FoodOfKind& food : safety.kinds) {
    PullCheck check = check_pull_temperature(food.kind, *pull, recipe.rest, table);
    if (check.cook_to) out.undercooked.push_back({food.ingredients, std::move(check)});
  }
}

}  // namespace detail

/// One notice for each dish of the menu, with all that it is made of. Undercooked is what FDA Food
/// Code 2022, 3-603.11, wants told: animal food below its minimum, also where a hold that no plan
/// shows may yet make up for it. Needs a book without circles; throws Failure for a dish that is no
/// recipe.
inline std::vector<DishNotice> dish_notices(const Event& event, const RecipeBook& book,
                                            const AllergenTable& allergens,
                                            const SafetyTable& safety) {
  std::vector<DishNotice> out;
  for (const MenuLine& line : event.menu) {
    const auto told = [&](const DishNotice& notice) { return notice.dish == line.recipe; };
    if (std::any_of(out.begin(), out.end(), told)) continue;
    DishNotice notice;
    notice.dish = line.recipe;
    notice.allergens = allergens_of(book.recipe(line.recipe), book, allergens);
    std::set<std::string> seen;
    std::vector<std::string> made;
    detail::append_makers_first(book, line.recipe, seen, made);
    for (const std::string& name : made) {
      detail::add_temperatures(book.recipe(name), book, safety, notice);
    }
    out.push_back(std::move(notice));
  }
  return out;
}

}  // namespace platewright
