// SPDX-License-Identifier: MIT
// What a batch takes of an ingredient, its sub-recipes included.

#include "platewright/recipe/taken.hpp"

#include "platewright/event/production.hpp"
#include "platewright/recipe/plan_for_short.hpp"
#include "support/catch.hpp"
#include "support/kitchen.hpp"
#include "support/problem_of.hpp"

using namespace platewright;
using namespace platewright::test;

namespace {

/// A pie of sauce and stock; the sauce is of stock as well, of which a tenth stays in the pot.
RecipeBook pies() {
  RecipeBook book;
  Recipe stock = recipe_making("stock", "1 gal", {line("garlic", "8 oz"), line("bones", "9 lb")});
  stock.lost = fraction(1, 10);
  book.add(stock);
  book.add(recipe_making("sauce", "2 qt", {line("stock", "3 qt"), line("garlic", "1-2 oz")}));
  book.add(recipe_for(
      "pie", 12,
      {line("leg", "6 lb"), line("garlic", "4 oz"), line("sauce", "1 qt"), line("stock", "1 qt")}));
  for (const char* name : {"leg", "bones"}) book.add(ingredient(name));
  book.add(ingredient("garlic", fraction(4, 5)));
  return book;
}

const Recipe& pie(const RecipeBook& book) {
  return book.recipe("pie");
}

std::string refused(const RecipeBook& book, const char* name = "garlic") {
  return problem_of([&] { plan_for_short(pie(book), name, amount("10 lb"), book); }).id;
}

}  // namespace

// Stock: 3/4 of half a sauce and 1 qt, 2 1/2 qt of 4 qt, over 9/10: 25/36 of a batch. Garlic: 4 oz,
// half of 2 oz, 25/36 of 8 oz, peeled from 5/4 of that.
TEST_CASE("all uses count together, to any depth, with what is lost on the way") {
  const RecipeBook book = pies();
  const Unit ounce = amount("1 oz").unit;
  const Taken bones = taken_of(pie(book), "bones", ounce, book);
  CHECK(bones.number == fraction(25, 36) * 144);
  CHECK(bones.takers == std::vector<std::string>{"stock"});
  const Taken garlic = taken_of(pie(book), "garlic", ounce, book);
  CHECK(garlic.number == (4 + 1 + fraction(25, 36) * 8) * fraction(5, 4));
  CHECK(garlic.takers == std::vector<std::string>{"pie", "stock", "sauce"});
  CHECK(taken_of(pie(book), "garlic", ounce, book, Stage::trimmed).number ==
        4 + 1 + fraction(25, 36) * 8);
  CHECK(taken_of(pie(book), "stock", amount("1 qt").unit, book).number == fraction(5, 2));
}

TEST_CASE("the batch made uses up what is on hand, as the cards of its sub-recipes say") {
  const RecipeBook book = pies();
  const ScalePlan plan = plan_for_short(pie(book), "garlic", amount("3 lb"), book);
  const Production made = plan_with_sub_recipes(scale(pie(book), plan, book), book, {});
  Rational used;
  const auto count = [&](const ScaledRecipe& scaled) {
    for (const ScaledLine& one : scaled.lines) {
      if (one.line->name == "garlic") used += amount_to_buy(one.amount)->canonical();
    }
  };
  count(made.dishes.front().scaled);
  for (const SubRecipePlan& sub : made.sub_recipes) count(sub.scaled);
  CHECK(made.sub_recipes.size() == 2);
  CHECK(used * fraction(5, 4) == amount("3 lb").canonical());
}

TEST_CASE("a weight on hand of the main ingredient counts what sub-recipes take of it") {
  RecipeBook book = pies();
  book.recipes.change("stock",
                      [&](Recipe& recipe) { recipe.lines.push_back(line("leg", "1 lb")); });
  const ScalePlan plan = plan_for_weight_on_hand(pie(book), pounds(20), book);
  CHECK(plan.factor == 20 / (6 + fraction(25, 36)));
  CHECK(plan.on_hand->takers == std::vector<std::string>{"pie", "stock"});
}

TEST_CASE("a main ingredient is weighed as its line is written") {
  RecipeBook book = pies();
  const Recipe mash = recipe_for("mash", 10, {line("garlic", "2 lb"), line("stock", "1 qt")});
  // 1 qt of stock takes 8 oz x 1/4 / (9/10), peeled as the 2 lb are.
  CHECK(plan_for_weight_on_hand(mash, pounds(4), book).factor ==
        4 / (2 + fraction(8, 16) / 4 * fraction(10, 9)));
}

TEST_CASE("what does not follow the batch at any depth has no one factor") {
  RecipeBook book = pies();
  book.recipes.change("stock",
                      [&](Recipe& recipe) { recipe.lines[0].scale = ScalingRule::herb_formula; });
  CHECK(refused(book) == "short-not-in-proportion");
  CHECK(refused(book, "bones").empty());
  book = pies();
  book.recipes.change("pie", [&](Recipe& recipe) { recipe.lines[2].scale = ScalingRule::by_pan; });
  CHECK(refused(book, "bones") == "short-not-in-proportion");
  CHECK(refused(book, "leg").empty());
  book = pies();
  book.recipes.change("sauce", [&](Recipe& recipe) { recipe.whole_batches = true; });
  CHECK(refused(book) == "short-in-wholes");
  book = pies();
  book.recipes.change("stock", [&](Recipe& recipe) {
    recipe.tested = TestedPieces{1, "bone", pounds(1)};
  });
  CHECK(refused(book) == "short-in-wholes");
}

TEST_CASE("a share of other lines follows the batch where all of these do") {
  RecipeBook book = pies();
  book.recipes.change("stock", [&](Recipe& recipe) {
    recipe.lines.push_back(line("salt", builders::share_of(fraction(1, 50), {"bones"})));
  });
  CHECK(refused(book, "salt").empty());
  book.recipes.change("stock", [&](Recipe& recipe) { recipe.lines[1].scale = ScalingRule::fixed; });
  CHECK(refused(book, "salt") == "short-not-in-proportion");
}

TEST_CASE("a name that no line below has is not known, and circles are found first") {
  RecipeBook book = pies();
  CHECK(refused(book, "garlick") == "name-unknown");
  book.recipes.change("stock",
                      [&](Recipe& recipe) { recipe.lines.push_back(line("pie", "1 qt")); });
  CHECK(refused(book) == "recipe-cycle");
}
