#include "platewright/recipe/portions_by_yield.hpp"

#include "platewright/event/order.hpp"
#include "platewright/recipe/scale_plan.hpp"
#include "support/catch.hpp"
#include "support/supper.hpp"

using namespace platewright;
using namespace platewright::test;

namespace {

/// A leg of 7.5 lb that serves half of itself: 10 portions of 6 oz.
Kitchen kitchen_with(const char* portion) {
  Kitchen out = supper_kitchen();
  out.book.recipes.at("roast lamb").makes.portion = amount(portion);
  count_portions_by_yield(out.book);
  return out;
}

const Recipe& lamb(const Kitchen& kitchen) {
  return kitchen.book.recipe("roast lamb");
}

}  // namespace

TEST_CASE("the meat serves what its yield leaves") {
  CHECK(!supper_kitchen().book.recipe("roast lamb").makes.portions_by_yield);
  CHECK(lamb(kitchen_with("6 oz")).makes.portions_by_yield == Rational(10));
  CHECK(lamb(kitchen_with("8 oz")).makes.portions_by_yield == fraction(15, 2));
}

TEST_CASE("the smaller of the two numbers counts") {
  CHECK(counted_portions(lamb(kitchen_with("5 oz"))) == Rational(10));
  CHECK(counted_portions(lamb(kitchen_with("8 oz"))) == fraction(15, 2));
  CHECK(plan_for_portions(lamb(kitchen_with("6 oz")), 30).pieces == Rational(3));
  const ScalePlan plan = plan_for_portions(lamb(kitchen_with("8 oz")), 30);
  CHECK(plan.pieces == Rational(4));
  CHECK(plan.portions == Rational(30));
}

TEST_CASE("a portion that is more than the meat, or no weight, is not held against the yield") {
  Kitchen stew = kitchen_with("8 oz");
  stew.book.recipes.at("roast lamb").makes.of_whole_dish = true;
  CHECK(!portions_by_yield(lamb(stew), stew.book));
  CHECK(!portions_by_yield(lamb(kitchen_with("1 cup")), stew.book));
  CHECK(!portions_by_yield(stew.book.recipe("flat bread"), stew.book));
}

TEST_CASE("a poorer yield buys more meat") {
  Kitchen kitchen = kitchen_with("6 oz");
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
  kitchen.book.ingredients.at("lamb leg").ladder = Ladder({served});
  count_portions_by_yield(kitchen.book);
  // Eight from each leg: five legs.
  CHECK(legs() == 5);
}
