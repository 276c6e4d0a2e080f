// SPDX-License-Identifier: MIT
#pragma once
// What has to be known of each dish before it is eaten: allergens, food that is undercooked, steps
// that are not safe.

#include <map>
#include <string>
#include <vector>

#include "platewright/event/event_plan.hpp"
#include "platewright/problem/body.hpp"
#include "platewright/recipe/declared_allergens.hpp"
#include "platewright/recipe/step_notices.hpp"
#include "platewright/recipe/temperature_notices.hpp"

namespace platewright {

/// A step of the dish, or of what it is made of.
struct UnsafeStep {
  std::string recipe;
  StepNotice notice;
};

struct DishNotice {
  std::string dish;
  RecipeAllergens allergens;   ///< all of them
  DeclaredAllergens declared;  ///< as the chosen law lists them
  std::vector<UndercookedFood> undercooked;
  std::vector<UnknownMinimum> not_known;
  std::vector<UnsafeStep> steps;
};

/// The weights of the pieces that are cooked, by recipe; the tested ones where it has none.
using PieceWeights = std::map<std::string, Mass>;

PieceWeights piece_weights_of(const Production& production);

/// One notice for each dish of the menu, with all that it is made of. Undercooked is what FDA Food
/// Code 2022, 3-603.11, wants told: animal food below its minimum, also where a hold that no plan
/// shows may yet make up for it. Needs a book without circles; throws Failure for a dish that is no
/// recipe.
std::vector<DishNotice> dish_notices(const Event& event, const RecipeBook& book,
                                     const AllergenTable& allergens, const SafetyTable& safety,
                                     const PieceWeights& pieces = {});

/// Those of the dishes of a plan, at its sizes.
std::vector<DishNotice> dish_notices(const EventPlan& plan, const AllergenTable& allergens,
                                     const SafetyTable& safety);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/event/bodies/dish_notices.hpp"
#endif
