// SPDX-License-Identifier: MIT
#pragma once
// What the kitchen makes for an occasion: every dish scaled, every sub-recipe made once for all.

#include <set>
#include <string>
#include <vector>

#include "platewright/costing/plate_cost.hpp"
#include "platewright/event/event.hpp"
#include "platewright/problem/body.hpp"
#include "platewright/recipe/nesting.hpp"

namespace platewright {

/// One line of the menu, at the size that is wanted.
struct DishPlan {
  MenuLine menu;
  Rational portions_wanted;  ///< exact; a recipe of whole pieces makes at least as many
  ScaledRecipe scaled;
};

/// What all that use a recipe need of it together.
struct SubRecipeNeed {
  Amount needed;
  Rational batches;  ///< needed / what one batch makes
  std::vector<std::string> used_by;
};

/// A recipe that others use, at the size that all of them together need.
struct SubRecipePlan {
  ScaledRecipe scaled;
  Amount needed;
  Rational batches;
  std::vector<std::string> used_by;
};

/// Refers to the recipes of the book, which must live longer.
struct Production {
  std::vector<DishPlan> dishes;            ///< in the order of the menu
  std::vector<SubRecipePlan> sub_recipes;  ///< each before those that use it
};

/// Portions wanted of one line of the menu: sum(heads x portion share), of those for whom it is, x
/// share of the line x (1 + over-production).
inline Rational portions_wanted(const Event& event, const MenuLine& line) {
  return portion_count(event, line) * line.share * (1 + event.over);
}

/// The recipe at the size at which it is made, as a dish before as a sub-recipe; nothing where it
/// is not made.
const ScaledRecipe* find_scaled(const Production& production, const std::string& recipe);

namespace detail {

/// Every recipe below `name`, each before those that use it; the recipe itself comes last. Needs a
/// book without circles.
void append_makers_first(const RecipeBook& book, const std::string& name,
                         std::set<std::string>& seen, std::vector<std::string>& order);

}  // namespace detail

/// What to make. A recipe of whole pieces is made with the pieces that the supplier delivers, or
/// else with those it was tested on. A dish that other recipes use as well stands in both lists.
/// Throws Failure, at its place in the book, for a dish that is no recipe or counts no portions,
/// for no portions wanted, for a sub-recipe that does not make what is taken of it, and for recipes
/// below the menu that use each other in a circle or stand too deep, and for more than 20000 lines.
Production plan_production(const Event& event, const RecipeBook& book, const PriceList& prices);

Production plan_production(const Event&, const RecipeBook&&, const PriceList&) = delete;

/// One recipe, scaled already, and everything below it that has to be made for it. Throws Failure
/// as `plan_production` does.
Production plan_with_sub_recipes(const ScaledRecipe& scaled, const RecipeBook& book,
                                 const PriceList& prices);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/event/bodies/production.hpp"
#endif
