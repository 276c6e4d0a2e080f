// SPDX-License-Identifier: MIT
// Portions of another size, and what an ingredient on hand allows.

#include "platewright/recipe/plan_for_short.hpp"

#include "support/catch.hpp"
#include "support/kitchen.hpp"
#include "support/problem_of.hpp"

using namespace platewright;
using namespace platewright::test;

namespace {

Recipe stew() {
  Recipe out = recipe_for("stew", 20,
                          {line("shoulder", "8 lb"), line("garlic", "10 cloves"),
                           line("garlic", "1 oz"), line("bay", "2 leaves", ScalingRule::fixed)});
  out.makes.portion = amount("6 oz");
  return out;
}

/// Ten portions from one leg of 8 lb.
Recipe roast_of_one_leg() {
  Recipe out = recipe_for("roast", 10, {line("leg", "8 lb"), line("salt", "1 tbsp")});
  out.tested = TestedPieces{1, "leg", pounds(8)};
  return out;
}

RecipeBook larder() {
  RecipeBook out;
  Ingredient garlic = ingredient("garlic", fraction(4, 5));
  garlic.weights.rows = {weighing("1 clove", grams(3))};
  out.add(garlic);
  out.add(ingredient("shoulder"));
  return out;
}

std::string refused(const char* name, const char* on_hand) {
  return problem_of([&] { plan_for_short(stew(), name, amount(on_hand), larder()); }).id;
}

}  // namespace

// New total weight over old: 50 x 8 oz over 20 x 6 oz.
TEST_CASE("a change of portion size scales by the total weight") {
  const ScalePlan plan = plan_for_portion_size(stew(), amount("8 oz"), no_book, Rational(50));
  CHECK(plan.factor == fraction(400, 120));
  CHECK(plan.portions == Rational(50));
  CHECK(plan.portion == amount("8 oz"));
}

TEST_CASE("a change of portion size alone keeps the number of portions") {
  CHECK(plan_for_portion_size(stew(), amount("3 oz"), no_book).factor == fraction(1, 2));
  CHECK(plan_for_portion_size(stew(), amount("3 oz"), no_book).portions == Rational(20));
}

TEST_CASE("portions of a recipe of whole pieces are those that the pieces give") {
  Recipe roast = recipe_for("roast", 10, {line("leg", "8 lb")});
  roast.makes.portion = amount("6 oz");
  roast.tested = TestedPieces{1, "leg", pounds(8)};
  const ScalePlan plan = plan_for_portion_size(roast, amount("4 oz"), no_book, Rational(20));
  CHECK(plan.pieces == Rational(2));
  CHECK(plan.portions == Rational(30));
}

TEST_CASE("a portion size needs one in the recipe, of the same measure") {
  const Recipe plain = recipe_for("soup", 12, {line("stock", "3 qt")});
  CHECK(problem_of([&] { plan_for_portion_size(plain, amount("8 oz"), no_book); }).id ==
        "recipe-no-portion-size");
  CHECK(problem_of([&] { plan_for_portion_size(stew(), amount("1 cup"), no_book); }).id ==
        "units-do-not-mix");
}

TEST_CASE("what is short decides, as it comes from the store") {
  CHECK(plan_for_short(stew(), "shoulder", amount("20 lb"), larder()).factor == fraction(5, 2));
  // 10 cloves of 3 g and 1 oz, ready to cook, at a yield of 4/5.
  const Rational used = (30 + printed("28.349523125")) * fraction(5, 4);
  CHECK(plan_for_short(stew(), "garlic", amount("200 g"), larder()).factor == 200 / used);
}

TEST_CASE("of whole pieces, as many are cooked as there is enough for") {
  Recipe roast = recipe_for("roast", 10, {line("leg", "8 lb"), line("shoulder", "2 lb")});
  roast.tested = TestedPieces{1, "leg", pounds(8)};
  const ScalePlan plan = plan_for_short(roast, "shoulder", amount("7 lb"), larder());
  CHECK(plan.asked == fraction(7, 2));
  CHECK(plan.pieces == Rational(3));
  const auto too_little = [&] { plan_for_short(roast, "shoulder", amount("1 lb"), larder()); };
  CHECK(problem_of(too_little).id == "short-of-a-piece");
}

TEST_CASE("of whole batches, as many are made as there is enough for") {
  Recipe pastry = stew();
  pastry.whole_batches = true;
  CHECK(plan_for_short(pastry, "shoulder", amount("20 lb"), larder()).factor == 2);
}

TEST_CASE("what can't be short is refused") {
  CHECK(refused("bay", "1 leaf") == "short-not-in-proportion");
  CHECK(refused("shoulders", "1 lb") == "name-unknown");
  CHECK(refused("shoulder", "1 cup") == "density-missing");
  CHECK(refused("shoulder", "0 lb") == "number-not-positive");
}

TEST_CASE("what is on hand is cooked as it is") {
  const ScalePlan plan = plan_for_weight_on_hand(roast_of_one_leg(), pounds(31), {});
  CHECK(plan.factor == fraction(31, 8));
  CHECK(*plan.pieces == fraction(31, 8));
  CHECK_FALSE(plan.rounded_up);
  CHECK(*plan.portions == fraction(155, 4));
}

// Armed Forces Recipe Service, card A-1: 102 lb on hand, 30 lb for 100: 340 portions.
TEST_CASE("102 lb on hand are 340 portions") {
  const Recipe card = recipe_for("card", 100, {line("beef", "30 lb")});
  const ScalePlan plan = plan_for_weight_on_hand(card, pounds(102), {});
  CHECK(plan.factor == fraction(17, 5));
  CHECK(*plan.portions == 340);
}

TEST_CASE("nothing is made from nothing on hand") {
  const auto on_hand = [](const Recipe& recipe, const Mass& mass) {
    return problem_of([&] { plan_for_weight_on_hand(recipe, mass, {}); }).id;
  };
  CHECK(on_hand(recipe_for("a", 1, {line("salt", "to taste")}), pounds(1)) == "scale-nothing");
  CHECK(on_hand(recipe_for("a", 1, {}), pounds(1)) == "scale-nothing");
  CHECK(on_hand(recipe_for("a", 1, {line("stock", "3 qt")}), pounds(1)) == "wrong-dimension");
  CHECK(on_hand(recipe_for("a", 1, {line("leg", "0 lb")}), pounds(1)) == "number-not-positive");
  CHECK(on_hand(roast_of_one_leg(), Mass()) == "number-not-positive");
}

TEST_CASE("the plan says what decided the size") {
  const ScalePlan plan = plan_for_short(stew(), "garlic", amount("200 g"), larder());
  REQUIRE(plan.on_hand);
  CHECK(plan.on_hand->name == "garlic");
  CHECK(plan.on_hand->amount == amount("200 g"));
  CHECK(plan.on_hand->takers == std::vector<std::string>{"stew"});
  CHECK(plan_for_weight_on_hand(roast_of_one_leg(), pounds(31), {}).on_hand->amount ==
        amount("31 lb"));
  CHECK_FALSE(plan_for_factor(stew(), 2, no_book).on_hand);
}
