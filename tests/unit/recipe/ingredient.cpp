// SPDX-License-Identifier: MIT
// At which stage an amount is written, and what has to be taken from the store for it.

#include "platewright/recipe/ingredient.hpp"

#include "support/catch.hpp"
#include "support/kitchen.hpp"
#include "support/problem_of.hpp"

using namespace platewright;
using namespace platewright::test;

namespace {

Rung rung(Stage from, Stage to, const Rational& yield, Loss loss) {
  Rung out;
  out.from = from;
  out.to = to;
  out.yield = yield;
  out.holds = {loss};
  return out;
}

/// 3/4 after trim, 2/3 of that after cooking.
Ingredient shoulder() {
  Ingredient out = ingredient("shoulder");
  out.is_cut = true;
  out.ladder = Ladder({rung(Stage::purchased, Stage::trimmed, fraction(3, 4), Loss::trim),
                       rung(Stage::trimmed, Stage::cooked, fraction(2, 3), Loss::cooking)});
  return out;
}

Unit unit(const char* name) {
  return unit_table().find(name, MeasuringSystem::us);
}

}  // namespace

TEST_CASE("cuts are written as purchased, everything else ready to cook") {
  CHECK(usual_stage(shoulder()) == Stage::purchased);
  CHECK(usual_stage(ingredient("onion")) == Stage::trimmed);
}

TEST_CASE("the yield to a stage is that of all rungs up to it") {
  CHECK(yield_to(shoulder(), Stage::purchased) == 1);
  CHECK(yield_to(shoulder(), Stage::trimmed) == fraction(3, 4));
  CHECK(yield_to(shoulder(), Stage::cooked) == fraction(1, 2));
  CHECK(yield_to(shoulder(), Stage::served) == fraction(1, 2));
  CHECK(yield_to(ingredient("salt"), Stage::served) == 1);
}

TEST_CASE("the amount to take from the store") {
  CHECK(as_purchased(amount("6 lb"), Stage::purchased, shoulder(), unit("lb")) == amount("6 lb"));
  CHECK(as_purchased(amount("6 lb"), Stage::trimmed, shoulder(), unit("lb")) == amount("8 lb"));
  CHECK(as_purchased(amount("6 lb"), Stage::cooked, shoulder(), unit("lb")) == amount("12 lb"));
  CHECK(as_purchased(amount("8 oz"), Stage::cooked, shoulder(), unit("lb")) == amount("1 lb"));
}

// Armed Forces Recipe Service, card A-6: 3 lb of pared cucumber need 3.57 lb, a factor of 1.19.
TEST_CASE("pared cucumber") {
  const Ingredient cucumber = ingredient("cucumber", fraction(100, 119));
  CHECK(as_purchased(amount("3 lb"), Stage::trimmed, cucumber, unit("lb")).number ==
        fraction(357, 100));
}

TEST_CASE("whole things bought by the count lose nothing by their trim") {
  Ingredient egg = ingredient("egg", fraction(7, 8));
  egg.weights.rows = {weighing("1 each", grams(50))};
  CHECK(as_purchased(amount("12"), Stage::trimmed, egg, unit("dozen")) == amount("1 dozen"));
  CHECK(as_purchased(amount("7"), Stage::trimmed, egg, unit("g")).number == 400);
}

TEST_CASE("a measure without a weight can't be bought by weight") {
  CHECK(problem_of([] {
          as_purchased(amount("1 cup"), Stage::trimmed, ingredient("gravel"), unit("lb"));
        }).id == "density-missing");
}
