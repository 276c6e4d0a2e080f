// SPDX-License-Identifier: MIT
#include "platewright/recipe/portions_by_yield.hpp"

#include "platewright/event/order.hpp"
#include "platewright/recipe/scale_plan.hpp"
#include "support/catch.hpp"
#include "support/supper.hpp"

using namespace platewright;
using namespace platewright::test;

namespace {

/// A leg of 7.5 lb that serves half of itself: 10 portions of 6 oz.
TestKitchen kitchen_with(const char* portion) {
  TestKitchen out = supper_kitchen();
  out.book.recipes.change("roast lamb",
                          [&](Recipe& recipe) { recipe.makes.portion = amount(portion); });
  return out;
}

const Recipe& lamb(const TestKitchen& kitchen) {
  return kitchen.book.recipe("roast lamb");
}

}  // namespace

TEST_CASE("the meat serves what its yield leaves") {
  const auto by_yield = [](const TestKitchen& kitchen) {
    return portions_by_yield(lamb(kitchen), kitchen.book);
  };
  CHECK(!by_yield(supper_kitchen()));
  CHECK(by_yield(kitchen_with("6 oz")) == Rational(10));
  CHECK(by_yield(kitchen_with("8 oz")) == fraction(15, 2));
}

TEST_CASE("the smaller of the two numbers counts") {
  const auto counted = [](const TestKitchen& kitchen) {
    return counted_portions(lamb(kitchen), kitchen.book);
  };
  CHECK(counted(kitchen_with("5 oz")) == Rational(10));
  CHECK(counted(kitchen_with("8 oz")) == fraction(15, 2));
  const TestKitchen enough = kitchen_with("6 oz");
  CHECK(plan_for_portions(lamb(enough), 30, enough.book).pieces == Rational(3));
  const TestKitchen short_of = kitchen_with("8 oz");
  const ScalePlan plan = plan_for_portions(lamb(short_of), 30, short_of.book);
  CHECK(plan.pieces == Rational(4));
  CHECK(plan.portions == Rational(30));
}

TEST_CASE("a portion that is more than the meat, or no weight, is not held against the yield") {
  TestKitchen stew = kitchen_with("8 oz");
  stew.book.recipes.change("roast lamb",
                           [&](Recipe& recipe) { recipe.makes.of_whole_dish = true; });
  CHECK(!portions_by_yield(lamb(stew), stew.book));
  const TestKitchen soup = kitchen_with("1 cup");
  CHECK(!portions_by_yield(lamb(soup), soup.book));
  CHECK(!portions_by_yield(stew.book.recipe("flat bread"), stew.book));
}

TEST_CASE("a poorer yield buys more meat") {
  TestKitchen kitchen = kitchen_with("6 oz");
  const auto legs = [&] {
    return make_order(supper(), plan_production(supper(), kitchen.book, kitchen.prices),
                      kitchen.book, kitchen.prices)
        .suppliers.front()
        .lines.front()
        .packs;
  };
  // 79 portions x 2/5 x 1.05 are 33.18: four legs of ten.
  CHECK(legs() == 4);
  Rung served;
  served.to = Stage::served;
  served.yield = fraction(2, 5);
  kitchen.book.ingredients.change(
      "lamb leg", [&](Ingredient& ingredient) { ingredient.ladder = Ladder({served}); });
  // Eight from each leg: five legs.
  CHECK(legs() == 5);
}
