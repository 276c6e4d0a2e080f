// SPDX-License-Identifier: MIT
// Every line by its own rule.

#include "platewright/recipe/scaled_recipe.hpp"

#include "support/catch.hpp"
#include "support/kitchen.hpp"
#include "support/problem_of.hpp"

using namespace platewright;
using namespace platewright::test;

namespace {

Recipe roast_with_rub() {
  Recipe out = recipe_for(
      "roast", 10,
      {line("leg", "8 lb"), line("rub", "4 tbsp", ScalingRule::by_surface),
       line("twine", "6 ft", ScalingRule::by_piece),
       line("chilli", "2 tsp", ScalingRule::held_back), line("bay", "1 leaf", ScalingRule::fixed),
       line("salt", "to taste"), line("wine", "1-2 cups")});
  out.lines[3].start_share = fraction(1, 2);
  out.tested = TestedPieces{1, "leg", pounds(8)};
  return out;
}

}  // namespace

TEST_CASE("each rule, at ten roasts of the tested weight") {
  const Recipe recipe = roast_with_rub();
  const ScaledRecipe ten = scale(recipe, plan_for_pieces(recipe, 10, no_book), no_book);
  CHECK(ten.lines[0].amount.low() == amount("80 lb"));
  CHECK(ten.lines[1].amount.low() == amount("40 tbsp"));
  CHECK(ten.lines[2].amount.low() == amount("60 ft"));
  CHECK(ten.lines[3].amount.low() == amount("20 tsp"));
  CHECK(ten.lines[3].start.low() == amount("10 tsp"));
  CHECK(ten.lines[4].amount.low() == amount("1 leaf"));
  CHECK(ten.lines[5].amount.to_taste());
  CHECK(ten.lines[6].amount.low() == amount("10 cups"));
  CHECK(ten.lines[6].amount.high() == amount("20 cups"));
}

TEST_CASE("each rule, at one roast of eight times the weight") {
  const Recipe recipe = roast_with_rub();
  const ScaledRecipe large =
      scale(recipe, plan_for_pieces(recipe, 1, no_book, pounds(64)), no_book);
  CHECK(large.lines[0].amount.low() == amount("64 lb"));
  CHECK(large.lines[1].amount.low() == amount("16 tbsp"));
  CHECK(large.lines[2].amount.low() == amount("6 ft"));
  CHECK(large.lines[3].amount.low() == amount("16 tsp"));
  CHECK(large.lines[4].amount.low() == amount("1 leaf"));
}

// Eight is 8 and 4 and 1; twice is 2 and 1.587 and 1.
TEST_CASE("the rules differ, so that none can stand for another") {
  const ScalePlan plan = plan_for_pieces(roast_with_rub(), 2, no_book, pounds(64));
  CHECK(factor_for(ScalingRule::proportional, plan) == 16);
  CHECK(factor_for(ScalingRule::held_back, plan) == 16);
  CHECK(factor_for(ScalingRule::by_surface, plan) == 8);
  CHECK(factor_for(ScalingRule::by_piece, plan) == 2);
  CHECK(factor_for(ScalingRule::fixed, plan) == 1);
}

TEST_CASE("pieces that the recipe does not name") {
  for (const ScalingRule rule : {ScalingRule::by_surface, ScalingRule::by_piece}) {
    const Recipe recipe = recipe_for("soup", 4, {line("rub", "1 tbsp", rule)});
    const Problem problem =
        problem_of([&] { scale(recipe, plan_for_factor(recipe, 2, no_book), no_book); });
    CHECK(problem.id == "surface-no-pieces");
    CHECK(problem.found == "\"rub\" follows pieces that the recipe does not name");
  }
}

TEST_CASE("batches of a recipe that another one uses") {
  const Recipe stock = recipe_making("stock", "2 qt", {});
  CHECK(batches_for(stock, amount("3 cups")) == fraction(3, 8));
  CHECK(problem_of([&] { batches_for(stock, amount("1 lb")); }).id == "recipe-amount-unreachable");
  Recipe rolls = recipe_for("rolls", 24, {});
  CHECK(batches_for(rolls, amount("12")) == fraction(1, 2));
  CHECK(problem_of([&] { batches_for(rolls, amount("1 lb")); }).id == "recipe-no-amount");
  rolls.makes.portion = amount("2 oz");
  CHECK(batches_for(rolls, amount("3 lb")) == 1);
}

TEST_CASE("of a range the upper end is bought") {
  CHECK(amount_to_buy(LineAmount::range(amount("2 lb"), amount("3 lb"))) == amount("3 lb"));
  CHECK(amount_to_buy(amount("2 lb")) == amount("2 lb"));
  CHECK_FALSE(amount_to_buy({}));
}

TEST_CASE("rules by name") {
  CHECK(scaling_rule_from("by surface") == ScalingRule::by_surface);
  CHECK(name_of(ScalingRule::held_back) == "held back");
  const Problem problem = problem_of([] { scaling_rule_from("by surfaces"); });
  CHECK(problem.id == "word-unknown");
  CHECK(problem.remedy == "did you mean \"by surface\"?");
}
