// SPDX-License-Identifier: MIT
#pragma once
// What stands on the containers of an event's food.

#include <algorithm>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "platewright/event/event_plan.hpp"
#include "platewright/recipe/declared_allergens.hpp"

namespace platewright {

/// The label of one recipe of the plan.
struct FoodLabel {
  std::string food;
  std::optional<Rational> containers;  ///< how many are filled; none where the plan counts none
  std::string container;               ///< what they are, where the plan counts them
  std::optional<KeptFood> kept;        ///< days and place; none where no step keeps it cold
  RecipeAllergens allergens;           ///< all of them, with those of what it is made of
  DeclaredAllergens declared;          ///< as the chosen law lists them
};

namespace detail {

inline FoodLabel label_of(const ScaledRecipe& scaled, const EventPlan& plan,
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

/// One label for each recipe that is made, sub-recipes first, a dish that is on the menu twice
/// once. `timeline` is that of the plan. It never fails.
inline std::vector<FoodLabel> food_labels(const EventPlan& plan, const Timeline& timeline,
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
