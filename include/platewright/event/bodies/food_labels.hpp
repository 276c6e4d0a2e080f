// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/event/food_labels.hpp.

#include <algorithm>

#include "platewright/event/food_labels.hpp"

namespace platewright {

namespace detail {

PLATEWRIGHT_BODY FoodLabel label_of(const ScaledRecipe& scaled, const EventPlan& plan,
                                    const Timeline& timeline, const AllergenTable& table) {
  FoodLabel out;
  out.food = scaled.recipe->name;
  if (scaled.plan.vessels && scaled.plan.vessel) {
    out.containers = scaled.plan.vessels->count;
    out.container = scaled.plan.vessel->name;
  }
  const auto kept = std::find_if(timeline.kept.begin(), timeline.kept.end(),
                                 [&](const KeptFood& food) { return food.recipe == out.food; });
  if (kept != timeline.kept.end()) out.kept = *kept;
  out.allergens = allergens_of(*scaled.recipe, plan.recipes(), table);
  out.declared = declared(out.allergens, table);
  return out;
}

}  // namespace detail

PLATEWRIGHT_BODY std::vector<FoodLabel> food_labels(const EventPlan& plan, const Timeline& timeline,
                                                    const AllergenTable& table) {
  std::vector<FoodLabel> out;
  const auto add = [&](const ScaledRecipe& scaled) {
    const auto there = [&](const FoodLabel& label) { return label.food == scaled.recipe->name; };
    if (std::any_of(out.begin(), out.end(), there)) return;
    out.push_back(detail::label_of(scaled, plan, timeline, table));
  };
  for (const SubRecipePlan& sub : plan.production().sub_recipes) add(sub.scaled);
  for (const DishPlan& dish : plan.production().dishes) add(dish.scaled);
  return out;
}

}  // namespace platewright
