// SPDX-License-Identifier: MIT
#pragma once
// What has to be known of each dish before it is eaten: allergens, food that is undercooked, steps
// that are not safe.

#include <algorithm>
#include <iterator>
#include <map>
#include <optional>
#include <set>
#include <string>
#include <utility>
#include <vector>

#include "platewright/event/event_plan.hpp"
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

inline PieceWeights piece_weights_of(const Production& production) {
  PieceWeights out;
  const auto add = [&](const ScaledRecipe& scaled) {
    if (scaled.plan.piece_weight) out.emplace(scaled.recipe->name, *scaled.plan.piece_weight);
  };
  for (const DishPlan& dish : production.dishes) add(dish.scaled);
  for (const SubRecipePlan& sub_recipe : production.sub_recipes) add(sub_recipe.scaled);
  return out;
}

namespace detail {

inline void add_notices_of(const Recipe& recipe, const RecipeBook& book, const SafetyTable& safety,
                           const PieceWeights& pieces, DishNotice& out) {
  TemperatureNotices found = temperature_notices(recipe, book, safety);
  std::move(found.undercooked.begin(), found.undercooked.end(),
            std::back_inserter(out.undercooked));
  std::move(found.not_known.begin(), found.not_known.end(), std::back_inserter(out.not_known));
  const auto piece = pieces.find(recipe.name);
  const auto weight =
      piece == pieces.end() ? std::optional<Mass>() : std::optional<Mass>(piece->second);
  for (StepNotice& notice : step_notices(recipe, book, safety, weight)) {
    out.steps.push_back({recipe.name, std::move(notice)});
  }
}

}  // namespace detail

/// One notice for each dish of the menu, with all that it is made of. Undercooked is what FDA Food
/// Code 2022, 3-603.11, wants told: animal food below its minimum, also where a hold that no plan
/// shows may yet make up for it. Needs a book without circles; throws Failure for a dish that is no
/// recipe.
inline std::vector<DishNotice> dish_notices(const Event& event, const RecipeBook& book,
                                            const AllergenTable& allergens,
                                            const SafetyTable& safety,
                                            const PieceWeights& pieces = {}) {
  std::vector<DishNotice> out;
  for (const MenuLine& line : event.menu) {
    const auto told = [&](const DishNotice& notice) { return notice.dish == line.recipe; };
    if (std::any_of(out.begin(), out.end(), told)) continue;
    DishNotice notice;
    notice.dish = line.recipe;
    notice.allergens = allergens_of(book.recipe(line.recipe), book, allergens);
    notice.declared = declared(notice.allergens, allergens);
    std::set<std::string> seen;
    std::vector<std::string> made;
    detail::append_makers_first(book, line.recipe, seen, made);
    for (const std::string& name : made) {
      detail::add_notices_of(book.recipe(name), book, safety, pieces, notice);
    }
    out.push_back(std::move(notice));
  }
  return out;
}

/// Those of the dishes of a plan, at its sizes.
inline std::vector<DishNotice> dish_notices(const EventPlan& plan, const AllergenTable& allergens,
                                            const SafetyTable& safety) {
  return dish_notices(plan.event(), plan.recipes(), allergens, safety,
                      piece_weights_of(plan.production()));
}

}  // namespace platewright
