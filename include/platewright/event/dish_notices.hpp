#pragma once
// What guests are told of each dish before they eat it: allergens, and food that is undercooked.

#include <algorithm>
#include <iterator>
#include <set>
#include <string>
#include <utility>
#include <vector>

#include "platewright/event/event.hpp"
#include "platewright/event/production.hpp"
#include "platewright/recipe/recipe_allergens.hpp"
#include "platewright/recipe/temperature_notices.hpp"

namespace platewright {

struct DishNotice {
  std::string dish;
  RecipeAllergens allergens;
  std::vector<UndercookedFood> undercooked;
  std::vector<UnknownMinimum> not_known;
};

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
      TemperatureNotices found = temperature_notices(book.recipe(name), book, safety);
      std::move(found.undercooked.begin(), found.undercooked.end(),
                std::back_inserter(notice.undercooked));
      std::move(found.not_known.begin(), found.not_known.end(),
                std::back_inserter(notice.not_known));
    }
    out.push_back(std::move(notice));
  }
  return out;
}

}  // namespace platewright
