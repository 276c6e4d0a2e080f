// SPDX-License-Identifier: MIT
#include "platewright/event/production.hpp"

#include "support/catch.hpp"
#include "support/problem_of.hpp"
#include "support/supper.hpp"

using namespace platewright;
using namespace platewright::test;

namespace {

Production plan(const Event& event, const TestKitchen& kitchen) {
  return plan_production(event, kitchen.book, kitchen.prices);
}

std::string refused(const Event& event, const TestKitchen& kitchen) {
  return problem_of([&] { plan(event, kitchen); }).id;
}

}  // namespace

TEST_CASE("portions wanted follow heads, shares and over-production") {
  const Event event = supper();
  CHECK(guest_count(event) == 84);
  CHECK(portion_count(event) == 79);
  CHECK(portions_wanted(event, event.menu[0]) == printed("33.18"));
  CHECK(portions_wanted(event, event.menu[1]) == printed("82.95"));
}

TEST_CASE("a dish of whole pieces is made with whole pieces") {
  const TestKitchen kitchen = supper_kitchen();
  const Production production = plan(supper(), kitchen);
  REQUIRE(production.dishes.size() == 2);
  const DishPlan& lamb = production.dishes[0];
  CHECK(lamb.portions_wanted == printed("33.18"));
  CHECK(lamb.scaled.plan.asked == printed("3.318"));
  CHECK(lamb.scaled.plan.pieces == Rational(4));
  CHECK(lamb.scaled.plan.portions == Rational(40));
  CHECK(production.dishes[1].scaled.plan.factor == printed("4.1475"));
}

TEST_CASE("the supplier's pieces decide how many there are") {
  TestKitchen kitchen = supper_kitchen();
  kitchen.prices.entries["lamb leg"].purchases[0].content = amount("6 lb");
  const Production light = plan(supper(), kitchen);
  CHECK(light.dishes[0].scaled.plan.piece_weight == pounds(6));
  CHECK(light.dishes[0].scaled.plan.pieces == Rational(5));
  CHECK(light.dishes[0].scaled.lines[0].amount.low() == amount("30 lb"));
}

TEST_CASE("sub-recipes are added up over all dishes and made before their users") {
  const TestKitchen kitchen = supper_kitchen();
  const Production production = plan(supper(), kitchen);
  REQUIRE(production.sub_recipes.size() == 2);
  const SubRecipePlan& paste = production.sub_recipes[0];
  const SubRecipePlan& sauce = production.sub_recipes[1];
  CHECK(sauce.scaled.recipe->name == "green sauce");
  CHECK(sauce.needed == amount("2 qt"));
  CHECK(sauce.batches == 2);
  CHECK(sauce.used_by == std::vector<std::string>{"roast lamb"});
  // 1/4 cup for each of 2 batches of sauce, 1/2 cup for each of 4.1475 of bread
  CHECK(paste.scaled.recipe->name == "anchovy paste");
  CHECK(paste.needed.number == printed("2.57375"));
  CHECK(paste.scaled.plan.factor == printed("2.57375"));
  CHECK(paste.used_by == std::vector<std::string>{"flat bread", "green sauce"});
}

TEST_CASE("a sub-recipe that counts portions is taken by the piece") {
  TestKitchen kitchen = supper_kitchen();
  kitchen.add(recipe_for("dumplings", 12, {line("flour", "1 lb")}));
  kitchen.add(recipe_for("broth", 4, {line("dumplings", "8")}));
  kitchen.add(recipe_for("hotpot", 4, {line("dumplings", "1 dozen")}));
  Event event = supper();
  event.guests = {{"adults", 4, 1, 1}};
  event.over = 0;
  event.menu = {{"broth", 1, {}}, {"hotpot", 1, {}}};
  const Production production = plan(event, kitchen);
  REQUIRE(production.sub_recipes.size() == 1);
  CHECK(production.sub_recipes[0].needed.canonical() == 20);
  CHECK(production.sub_recipes[0].batches == fraction(5, 3));
}

TEST_CASE("a sub-recipe that no one takes any of is not made") {
  TestKitchen kitchen = supper_kitchen();
  kitchen.book.recipes.change(
      "roast lamb", [&](Recipe& recipe) { recipe.lines[3] = line("green sauce", "to taste"); });
  Event event = supper();
  event.menu = {{"roast lamb", 1, {}}};
  CHECK(plan(event, kitchen).sub_recipes.empty());
}

TEST_CASE("a menu that can't be made is reported at its place") {
  const TestKitchen kitchen = supper_kitchen();
  Event event = supper();
  event.menu[1].recipe = "flat bred";
  event.menu[1].place.line = 9;
  const Problem unknown = problem_of([&] { plan(event, kitchen); });
  CHECK(unknown.id == "name-unknown");
  CHECK(unknown.place.line == 9);
  event.menu[1].recipe = "green sauce";
  CHECK(refused(event, kitchen) == "recipe-no-portions");
  event.menu[1] = {"flat bread", 0, {}};
  CHECK(refused(event, kitchen) == "number-not-positive");
}

TEST_CASE("recipes that use each other in a circle can't be planned") {
  TestKitchen kitchen = supper_kitchen();
  kitchen.book.recipes.change("anchovy paste", [&](Recipe& recipe) {
    recipe.lines.push_back(line("green sauce", "1 tbsp"));
  });
  CHECK(refused(supper(), kitchen) == "recipe-cycle");
}

TEST_CASE("an amount that a sub-recipe does not make is reported at its line") {
  TestKitchen kitchen = supper_kitchen();
  kitchen.book.recipes.change(
      "roast lamb", [&](Recipe& recipe) { recipe.lines[3] = line("green sauce", "1 lb"); });
  kitchen.book.recipes.change("roast lamb",
                              [&](Recipe& recipe) { recipe.lines[3].place.line = 12; });
  const Problem problem = problem_of([&] { plan(supper(), kitchen); });
  CHECK(problem.id == "recipe-amount-unreachable");
  CHECK(problem.place.line == 12);
}
