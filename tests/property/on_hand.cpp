// SPDX-License-Identifier: MIT
// What is on hand is used up, whatever the recipes below take of it.

#include "platewright/event/production.hpp"
#include "platewright/recipe/plan_for_short.hpp"
#include "support/catch.hpp"
#include "support/random_kitchen.hpp"

using namespace platewright;
using namespace platewright::test;

namespace {

/// What all the recipes made take of it, as it comes from the store.
Rational used_of(const Ingredient& ingredient, const Unit& unit, const Production& made) {
  Rational out;
  const auto add = [&](const ScaledRecipe& scaled) {
    for (const ScaledLine& line : scaled.lines) {
      if (line.line->name != ingredient.name) continue;
      out += as_purchased(*line.amount.low(), Stage::trimmed, ingredient, unit).number;
    }
  };
  for (const DishPlan& dish : made.dishes) add(dish.scaled);
  for (const SubRecipePlan& sub : made.sub_recipes) add(sub.scaled);
  return out;
}

}  // namespace

TEST_CASE("a recipe and its sub-recipes use up what is on hand, no more and no less") {
  CHECK(rc::check([] {
    const TestKitchen kitchen = random_kitchen();
    const Recipe& recipe = kitchen.book.recipe("recipe 5");
    const Amount on_hand = random_weight();
    for (const auto& [name, ingredient] : kitchen.book.ingredients) {
      const Production one = plan_with_sub_recipes(scale(recipe, ScalePlan{}, kitchen.book),
                                                   kitchen.book, kitchen.prices);
      if (used_of(ingredient, on_hand.unit, one) == 0) continue;
      const ScalePlan plan = plan_for_short(recipe, name, on_hand, kitchen.book);
      const Production made =
          plan_with_sub_recipes(scale(recipe, plan, kitchen.book), kitchen.book, kitchen.prices);
      RC_ASSERT(used_of(ingredient, on_hand.unit, made) == on_hand.number);
    }
  }));
}
