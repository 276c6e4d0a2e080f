// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/recipe/temperature_notices.hpp.

#include <utility>

#include "platewright/recipe/temperature_notices.hpp"

namespace platewright {

PLATEWRIGHT_BODY TemperatureNotices temperature_notices(const Recipe& recipe,
                                                        const RecipeBook& book,
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
