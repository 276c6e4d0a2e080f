// SPDX-License-Identifier: MIT
#pragma once
// What stands on the containers of an event's food.

#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "platewright/event/event_plan.hpp"
#include "platewright/problem/body.hpp"
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

FoodLabel label_of(const ScaledRecipe& scaled, const EventPlan& plan, const Timeline& timeline,
                   const AllergenTable& table);

}  // namespace detail

/// One label for each recipe that is made, sub-recipes first, a dish that is on the menu twice
/// once. `timeline` is that of the plan. It never fails.
std::vector<FoodLabel> food_labels(const EventPlan& plan, const Timeline& timeline,
                                   const AllergenTable& table);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/event/bodies/food_labels.hpp"
#endif
