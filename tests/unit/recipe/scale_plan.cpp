// SPDX-License-Identifier: MIT
// From one tested batch to the batch that is wanted.

#include "platewright/recipe/scale_plan.hpp"

#include "support/catch.hpp"
#include "support/kitchen.hpp"
#include "support/problem_of.hpp"

using namespace platewright;
using namespace platewright::test;

namespace {

/// Ten portions from one leg of 8 lb.
Recipe roast() {
  Recipe out = recipe_for("roast", 10, {line("leg", "8 lb"), line("salt", "1 tbsp")});
  out.tested = TestedPieces{1, "leg", pounds(8)};
  return out;
}

Recipe soup() {
  return recipe_for("soup", 12, {line("stock", "3 qt"), line("salt", "to taste")});
}

}  // namespace

// Holt, MTH 81 lecture notes, chapter 14: a recipe for 8, made for 53; 2 lb become 13.25 lb.
TEST_CASE("the recipe conversion factor is new yield over old and never rounded") {
  const ScalePlan plan =
      plan_for_portions(recipe_for("eights", 8, {line("a", "2 lb")}), 53, no_book);
  CHECK(plan.factor == fraction(53, 8));
  CHECK(plan.asked == plan.factor);
  CHECK(*plan.portions == 53);
  CHECK_FALSE(plan.pieces);
}

// Armed Forces Recipe Service, card A-1: 348 portions from a card for 100.
TEST_CASE("a card for 100 made for 348") {
  CHECK(plan_for_portions(recipe_for("card", 100, {line("a", "1 lb")}), 348, no_book).factor ==
        fraction(348, 100));
}

TEST_CASE("whole pieces are cooked, as many as cover what is asked") {
  const ScalePlan plan = plan_for_portions(roast(), 84, no_book);
  CHECK(plan.asked == fraction(42, 5));
  CHECK(*plan.pieces == 9);
  CHECK(plan.rounded_up);
  CHECK(plan.factor == 9);
  CHECK(plan.piece_factor == 9);
  CHECK(plan.surface_factor == 9);
  CHECK(*plan.portions == 90);
}

TEST_CASE("pieces that come out whole are not rounded") {
  const ScalePlan plan = plan_for_portions(roast(), 80, no_book);
  CHECK(*plan.pieces == 8);
  CHECK_FALSE(plan.rounded_up);
}

TEST_CASE("ten roasts of the tested weight need ten times the rub") {
  const ScalePlan plan = plan_for_pieces(roast(), 10, no_book);
  CHECK(plan.surface_factor == 10);
  CHECK(plan.factor == 10);
}

TEST_CASE("one roast of eight times the weight needs four times the rub") {
  const ScalePlan plan = plan_for_pieces(roast(), 1, no_book, pounds(64));
  CHECK(plan.factor == 8);
  CHECK(plan.surface_factor == 4);
  CHECK(plan.piece_factor == 1);
}

TEST_CASE("another weight of a piece changes how many are needed") {
  const ScalePlan plan = plan_for_portions(roast(), 80, no_book, pounds(10));
  CHECK(*plan.pieces == 7);
  CHECK(plan.asked == 8);
  CHECK(plan.factor == fraction(35, 4));
  CHECK(*plan.portions == fraction(175, 2));
}

TEST_CASE("what can't be scaled to says what is missing") {
  CHECK(problem_of([] { plan_for_pieces(soup(), 2, no_book); }).id == "recipe-no-pieces");
  CHECK(problem_of([] { plan_for_portions(recipe_making("stock", "2 qt", {}), 2, no_book); }).id ==
        "recipe-no-portions");
}

TEST_CASE("nothing is scaled to nothing") {
  CHECK(problem_of([] { plan_for_portions(soup(), 0, no_book); }).id == "number-not-positive");
  CHECK(problem_of([] { plan_for_factor(soup(), -1, no_book); }).id == "number-not-positive");
  CHECK(problem_of([] { plan_for_pieces(roast(), 0, no_book); }).id == "number-not-positive");
  CHECK(problem_of([] { plan_for_pieces(roast(), 1, no_book, Mass()); }).id ==
        "number-not-positive");
  CHECK(problem_of([] { plan_for_factor(roast(), 1, no_book, Mass()); }).id ==
        "number-not-positive");
  CHECK(problem_of([] { plan_for_portions(roast(), 5, no_book, Mass()); }).id ==
        "number-not-positive");
}
