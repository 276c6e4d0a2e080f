// SPDX-License-Identifier: MIT
#include "platewright/recipe/recipe_safety.hpp"

#include "support/catch.hpp"
#include "support/kitchen.hpp"

using namespace platewright;
using namespace platewright::test;

using Names = std::vector<std::string>;

namespace {

Ingredient of_kind(const char* name, const char* kind) {
  Ingredient out = ingredient(name);
  out.safety = std::string(kind) == "none" ? FoodKind::without_minimum() : FoodKind(kind);
  return out;
}

TestKitchen kitchen() {
  TestKitchen out;
  out.add(of_kind("thighs", "poultry"));
  out.add(of_kind("wings", "poultry"));
  out.add(of_kind("mince", "ground"));
  out.add(of_kind("flour", "none"));
  out.add(ingredient("stew meat"));
  return out;
}

Recipe until_140(Recipe recipe) {
  recipe.oven = {{Temperature::fahrenheit(400), std::nullopt, Temperature::fahrenheit(140)}};
  return recipe;
}

}  // namespace

TEST_CASE("each kind of food is named once, with its ingredients") {
  const Recipe recipe =
      recipe_for("mixed", 4,
                 {line("mince", "1 lb"), line("thighs", "1 lb"), line("flour", "1 oz"),
                  line("wings", "1 lb"), line("thighs", "2 lb")});
  const RecipeSafety safety = safety_of(recipe, kitchen().book);
  REQUIRE(safety.kinds.size() == 2);
  CHECK(safety.kinds[0].kind.key() == "ground");
  CHECK(safety.kinds[1].kind.key() == "poultry");
  CHECK(safety.kinds[1].ingredients == Names{"thighs", "wings"});
  CHECK(safety.not_stated.empty());
  CHECK(!safety.not_known());
}

TEST_CASE("an ingredient without a kind makes the minimum unknown") {
  const Recipe recipe =
      until_140(recipe_for("stew", 4, {line("stew meat", "1 lb"), line("flour", "1 oz")}));
  const RecipeSafety safety = safety_of(recipe, kitchen().book);
  CHECK(safety.not_known());
  CHECK(safety.not_stated == Names{"stew meat"});
  const Recipe bread = until_140(recipe_for("bread", 4, {line("flour", "1 lb")}));
  CHECK(!safety_of(bread, kitchen().book).not_known());
}

TEST_CASE("a pie is cooked to the minimum of its filling") {
  TestKitchen book = kitchen();
  book.add(recipe_making("filling", "2 lb", {line("thighs", "2 lb")}));
  const Recipe pie = recipe_for("pie", 8, {line("filling", "2 lb"), line("flour", "1 lb")});
  const RecipeSafety safety = safety_of(until_140(pie), book.book);
  REQUIRE(safety.kinds.size() == 1);
  CHECK(safety.kinds[0].kind.key() == "poultry");
  // Without a temperature inside, what is in the filling is no matter of this recipe.
  CHECK(safety_of(pie, book.book).kinds.empty());
  Recipe meat_pie = until_140(pie);
  meat_pie.lines.push_back(line("mince", "1 lb"));
  REQUIRE(safety_of(meat_pie, book.book).kinds.size() == 1);
  CHECK(safety_of(meat_pie, book.book).kinds[0].kind.key() == "ground");
}
