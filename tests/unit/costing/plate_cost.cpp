// SPDX-License-Identifier: MIT
#include "platewright/costing/plate_cost.hpp"

#include "support/catch.hpp"
#include "support/problem_of.hpp"
#include "support/supper.hpp"

using namespace platewright;
using namespace platewright::test;

namespace {

PlateCost cost_of(const TestKitchen& kitchen, const std::string& name, const Rational& factor = 1) {
  const Recipe& recipe = kitchen.book.recipe(name);
  return plate_cost(scale(recipe, plan_for_factor(recipe, factor, kitchen.book), kitchen.book),
                    kitchen.book, kitchen.prices);
}

}  // namespace

TEST_CASE("a recipe without sub-recipes is the sum of its lines") {
  const TestKitchen kitchen = supper_kitchen();
  const PlateCost cost = cost_of(kitchen, "anchovy paste");
  REQUIRE(cost.lines.size() == 2);
  CHECK(cost.lines[0].cost == money("3.00"));
  CHECK(cost.lines[0].supplier == "the fishmonger");
  CHECK(cost.lines[1].cost == money("1.00"));
  CHECK(cost.total == money("4.00"));
  CHECK(cost.lines[0].share == fraction(3, 4));
  CHECK(!cost.per_portion);
}

TEST_CASE("sub-recipes are costed by what they yield, to any depth") {
  const TestKitchen kitchen = supper_kitchen();
  // 1/4 cup of paste 1.00, 4 oz of parsley from 8 oz 7.20, 2 cups of oil 4.00
  const PlateCost sauce = cost_of(kitchen, "green sauce");
  CHECK(sauce.lines[0].cost == money("1.00"));
  CHECK(sauce.lines[0].is_recipe);
  CHECK(sauce.lines[1].cost == money("7.20"));
  CHECK(sauce.total == money("12.20"));
  // a leg 67.50, 8 cloves of 3 g through 3/4 at 8.00/kg 0.256, oil 0.25, half a quart of sauce 6.10
  const PlateCost lamb = cost_of(kitchen, "roast lamb", 2);
  CHECK(lamb.total == money("148.212"));
  CHECK(lamb.portions == Rational(20));
  CHECK(lamb.per_portion == money("7.4106"));
}

TEST_CASE("a line shows how its cost comes about") {
  const TestKitchen kitchen = supper_kitchen();
  const CostLine garlic = cost_of(kitchen, "roast lamb").lines[1];
  CHECK(garlic.written.low() == amount("8 cloves"));
  CHECK(garlic.stage == Stage::trimmed);
  CHECK(garlic.yield == fraction(3, 4));
  CHECK(garlic.purchased->number == fraction(32, 1000));
  CHECK(garlic.as_purchased->price == money("8.00"));
  CHECK(garlic.edible_portion->price == money(fraction(32, 3)));
  CHECK(garlic.cost == garlic.edible_portion->price * fraction(24, 1000));
  const CostLine lamb = cost_of(kitchen, "roast lamb").lines[0];
  CHECK(lamb.stage == Stage::purchased);
  CHECK(lamb.as_purchased->price == money("9.00"));
}

TEST_CASE("a range is costed at its upper end") {
  const CostLine flour = cost_of(supper_kitchen(), "flat bread").lines[0];
  CHECK(flour.used == amount("3 lb"));
  CHECK(flour.cost == money("2.40"));
}

TEST_CASE("lines to taste and free goods are listed without a cost") {
  const PlateCost sauce = cost_of(supper_kitchen(), "green sauce");
  CHECK(sauce.lines[3].free);
  CHECK(sauce.lines[3].cost == Money{});
  CHECK(sauce.lines[4].to_taste);
  CHECK(!sauce.lines[4].used);
}

TEST_CASE("a missing price names the ingredient and its line") {
  TestKitchen kitchen = supper_kitchen();
  kitchen.prices.entries.erase("anchovy");
  kitchen.book.recipes.change("anchovy paste",
                              [&](Recipe& recipe) { recipe.lines[0].place.line = 5; });
  const Problem problem = problem_of([&] { cost_of(kitchen, "roast lamb"); });
  CHECK(problem.id == "price-missing");
  CHECK(problem.found.find("\"anchovy\"") != std::string::npos);
  CHECK(problem.place.line == 5);
}

TEST_CASE("recipes that use each other in a circle can't be costed") {
  TestKitchen kitchen = supper_kitchen();
  kitchen.book.recipes.change("anchovy paste", [&](Recipe& recipe) {
    recipe.lines.push_back(line("green sauce", "1 tbsp"));
  });
  const Problem problem = problem_of([&] { cost_of(kitchen, "roast lamb"); });
  CHECK(problem.id == "recipe-cycle");
  CHECK(problem.found.find("\"green sauce\" -> \"anchovy paste\" -> \"green sauce\"") !=
        std::string::npos);
}

TEST_CASE("a sub-recipe in another measure than it makes is reported") {
  TestKitchen kitchen = supper_kitchen();
  kitchen.book.recipes.change(
      "roast lamb", [&](Recipe& recipe) { recipe.lines[3] = line("green sauce", "1 lb"); });
  CHECK(problem_of([&] { cost_of(kitchen, "roast lamb"); }).id == "recipe-amount-unreachable");
}

TEST_CASE("a plate of free things costs nothing") {
  TestKitchen kitchen = supper_kitchen();
  kitchen.add(recipe_for("a glass of water", 1, {line("water", "1 cup")}));
  const PlateCost cost = cost_of(kitchen, "a glass of water");
  CHECK(cost.total == Money{});
  CHECK(cost.lines[0].share == 0);
}

// The by-products' worth is taken off before the yield divides: a leg at 9.00 a pound with a fifth
// of it in bones worth 1.00 a pound costs 8.80 net, and half of it is served: 17.60 (not 18.00).
TEST_CASE("the edible-portion price is that of the price less what the by-products are worth") {
  TestKitchen kitchen = supper_kitchen();
  kitchen.prices.entries["lamb leg"].by_products = {
      {"bones", fraction(1, 5), money("1.00"), amount("1 lb").unit}};
  const CostLine lamb = cost_of(kitchen, "roast lamb").lines[0];
  CHECK(lamb.as_purchased->price == money("9.00"));
  CHECK(lamb.edible_portion->price == money("8.80"));
  CHECK(lamb.served_price->price == money("17.60"));
  CHECK(*lamb.cost_factor == fraction(1760, 900));
  CHECK(lamb.cost == lamb.edible_portion->price * lamb.purchased->number);
}

TEST_CASE("what another recipe uses is not credited too") {
  TestKitchen kitchen = supper_kitchen();
  kitchen.prices.entries["lamb leg"].by_products = {
      {"bones", fraction(1, 5), money("1.00"), amount("1 lb").unit, "bones for stock"}};
  const CostLine lamb = cost_of(kitchen, "roast lamb").lines[0];
  CHECK(lamb.credit == Money());
  CHECK(lamb.edible_portion->price == lamb.as_purchased->price);
}
