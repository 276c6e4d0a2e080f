// SPDX-License-Identifier: MIT
// Scaling against what published recipes and rules print.

#include "platewright/kitchen/measure_text.hpp"
#include "platewright/kitchen/rounding_rule.hpp"
#include "platewright/recipe/plan_for_short.hpp"
#include "platewright/recipe/roasting_time.hpp"
#include "platewright/recipe/scaled_recipe.hpp"
#include "support/catch.hpp"
#include "support/kitchen.hpp"

using namespace platewright;
using namespace platewright::test;

namespace {

/// The amount of a recipe's only line at its new size.
Amount scaled_line(const Recipe& recipe, const ScalePlan& plan) {
  return *scale(recipe, plan, no_book).lines.at(0).amount.low();
}

Amount spiced(ScalingRule rule, const char* written, const Rational& factor) {
  const Recipe recipe = recipe_for("spiced", 10, {line("spice", written, rule)});
  return scaled_line(recipe, plan_for_factor(recipe, factor, no_book));
}

}  // namespace

// Armed Forces Recipe Service, TM 10-412, card A-1, 2003: 1 lb 4 oz for 100, 348 wanted.
TEST_CASE("card A-1: factor 3.48, 4.35 lb") {
  const Recipe card = recipe_for("card", 100, {line("a", "1 lb 4 oz")});
  const ScalePlan plan = plan_for_portions(card, 348, no_book);
  CHECK(plan.factor == printed("3.48"));
  CHECK(to_mass(scaled_line(card, plan)).in(units::pound) == printed("4.35"));
}

// The same card: water for 333 portions, down to teaspoons. The page before it, with the amount for
// 100, is 6 gallons by the figures: 19.98 gallons are 15 344.64 teaspoons.
TEST_CASE("card A-1: 6 gallons for 100 are a cascade of measures for 333") {
  const Recipe card = recipe_for("card", 100, {line("water", "6 gal")});
  const Amount water = scaled_line(card, plan_for_portions(card, 333, no_book));
  CHECK(water.number == printed("19.98"));
  const auto unit = [](const char* name) { return amount(name).unit; };
  const KitchenChain chain{{unit("1 gal"), 0, 1}, {unit("1 qt"), 0, 1},   {unit("1 pt"), 0, 1},
                           {unit("1 cup"), 0, 1}, {unit("1 tbsp"), 0, 1}, {unit("1 tsp"), 0, 0}};
  const KitchenSteps quarters{{{0, amount("1/4 tsp").canonical()}}};
  CHECK(kitchen_parts_text(measure_out(to_volume(water), {quarters, chain})) ==
        "19 gal + 3 qt + 1 pt + 1 cup + 10 tbsp + 2 3/4 tsp");
}

// The same card: 348 servings of 3 oz from a recipe of 4 oz.
TEST_CASE("card A-1: a change of portion size, factor 2.61") {
  Recipe card = recipe_for("card", 100, {line("a", "1 lb")});
  card.makes.portion = amount("4 oz");
  const ScalePlan plan = plan_for_portion_size(card, amount("3 oz"), no_book, Rational(348));
  CHECK(plan.factor == printed("2.61"));
  CHECK(plan.portions == Rational(348));
}

// The same card: 102 lb on hand, 30 lb for 100.
TEST_CASE("card A-1: 102 lb on hand are 340 portions") {
  const Recipe card = recipe_for("card", 100, {line("a", "30 lb")});
  const ScalePlan plan = plan_for_weight_on_hand(card, pounds(102), {});
  CHECK(plan.factor == printed("3.40"));
  CHECK(plan.portions == Rational(340));
}

// Holt, MTH 81 lecture notes, chapter 14.
TEST_CASE("a recipe for 8 made for 53: 6.625, never rounded") {
  const Recipe eights = recipe_for("eights", 8, {line("a", "2 lb")});
  const ScalePlan plan = plan_for_portions(eights, 53, no_book);
  CHECK(plan.factor == printed("6.625"));
  CHECK(scaled_line(eights, plan).number == printed("13.25"));
}

// USDA Recipes for Schools, factor method.
TEST_CASE("50 servings made for 25 and for 100") {
  const Recipe school = recipe_for("school", 50, {line("chicken", "6 lb 6 oz")});
  CHECK(to_mass(scaled_line(school, plan_for_portions(school, 25, no_book))) == pounds(3, 3));
  CHECK(to_mass(scaled_line(school, plan_for_portions(school, 100, no_book))) == pounds(12, 12));
}

// Idaho State Department of Education, a recipe doubled.
TEST_CASE("spices are 1 1/2 times on a double") {
  CHECK(spiced(ScalingRule::spice_on_double, "2 tsp", 2) == amount("3 tsp"));
  CHECK(spiced(ScalingRule::spice_on_double, "2 tsp", fraction(1, 2)) == amount("1 tsp"));
}

// Canadian Spice Association, Spice Usage Ideas and Tips: 1 tbsp of basil for 10 is 6 tbsp for 100.
TEST_CASE("the herb formula: 1 tbsp for 10 is 2 for 20 and 6 for 100") {
  CHECK(spiced(ScalingRule::herb_formula, "1 tbsp", 2) == amount("2 tbsp"));
  CHECK(spiced(ScalingRule::herb_formula, "1 tbsp", 10) == amount("6 tbsp"));
}

// The same page: 1 tsp of red pepper for 10 servings is 4 tsp for 100.
TEST_CASE("hot red pepper: 1 tsp for 10 is 2 for 20 and 4 for 100") {
  CHECK(spiced(ScalingRule::hot_pepper, "1 tsp", 2) == amount("2 tsp"));
  CHECK(spiced(ScalingRule::hot_pepper, "1 tsp", 10) == amount("4 tsp"));
}

// A food-science text's rule for one shape: 8 lb in 2 3/4 h is 24 lb in 5.72 h. (A timed bird of
// 24 lb took 5 h, which is why the card calls it an estimate.)
TEST_CASE("8 lb in 2 3/4 h by the rule of thickness: 24 lb in 5.72 h") {
  Recipe roast = recipe_for("roast", 10, {line("bird", "8 lb")});
  roast.tested = TestedPieces{1, "bird", pounds(8)};
  roast.oven = {{Temperature::fahrenheit(325), time_of("2 3/4 h"), Temperature::fahrenheit(165)}};
  const auto steps = oven_plan(roast, plan_for_pieces(roast, 1, no_book, pounds(24)));
  CHECK(as_decimal(steps[0].step.time->in(units::hour), 2) == "5.72");
  CHECK(steps[0].estimate);
}
