// SPDX-License-Identifier: MIT
#pragma once
// What a recipe's temperature inside leaves undercooked, or leaves unsaid.

#include <string>
#include <utility>
#include <vector>

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

struct TemperatureNotices {
  std::vector<UndercookedFood> undercooked;
  std::vector<UnknownMinimum> not_known;
};

/// The notices of one recipe; none where it is not cooked to a temperature inside. Every sheet and
/// every check of a book says these and no others. It never fails.
inline TemperatureNotices temperature_notices(const Recipe& recipe, const RecipeBook& book,
                                              const SafetyTable& table) {
  TemperatureNotices out;
  const auto pull = pull_temperature(recipe);
  if (!pull) return out;
  const RecipeSafety safety = safety_of(recipe, book);
  if (safety.not_known()) out.not_known.push_back({safety.not_stated, *pull});
  for (const FoodOfKind& food : safety.kinds) {
    PullCheck check = check_pull_temperature(food.kind, *pull, recipe.rest, table);
    if (check.cook_to) out.undercooked.push_back({food.ingredients, std::move(check)});
  }
  return out;
}

}  // namespace platewright
