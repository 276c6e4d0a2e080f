// SPDX-License-Identifier: MIT
#include "platewright/recipe/recipe_allergens.hpp"

#include "support/allergen_rows.hpp"
#include "support/catch.hpp"
#include "support/supper.hpp"

using namespace platewright;
using namespace platewright::test;

TEST_CASE("an allergen deep in a sub-recipe reaches the top") {
  const TestKitchen kitchen = supper_kitchen();
  const RecipeAllergens lamb = allergens_of(kitchen.book.recipe("roast lamb"), kitchen.book);
  REQUIRE(lamb.found.size() == 1);
  CHECK(lamb.found[0].key == "fish");
  CHECK(lamb.found[0].ingredients == std::vector<std::string>{"anchovy"});
}

TEST_CASE("an allergen goes up through thirty recipes") {
  TestKitchen kitchen = supper_kitchen();
  std::string below = "anchovy paste";
  for (int depth = 0; depth < 30; ++depth) {
    const std::string name = "sauce " + std::to_string(depth);
    kitchen.add(recipe_making(name, "1 qt", {line(below, "to taste")}));
    below = name;
  }
  const RecipeAllergens top = allergens_of(kitchen.book.recipe(below), kitchen.book);
  REQUIRE(top.found.size() == 1);
  CHECK(top.found[0].key == "fish");
  CHECK(top.not_stated.empty());
}

TEST_CASE("ingredients whose allergens the book does not state are never lost") {
  TestKitchen kitchen = supper_kitchen();
  const RecipeAllergens lamb = allergens_of(kitchen.book.recipe("roast lamb"), kitchen.book);
  CHECK(lamb.not_stated == std::vector<std::string>{"garlic"});
  kitchen.book.ingredients.change("salt",
                                  [&](Ingredient& ingredient) { ingredient.allergens.reset(); });
  kitchen.book.ingredients.erase("parsley");
  kitchen.book.recipes.erase("anchovy paste");
  const RecipeAllergens torn = allergens_of(kitchen.book.recipe("roast lamb"), kitchen.book);
  CHECK(torn.found.empty());
  CHECK(torn.not_stated == std::vector<std::string>{"anchovy paste", "garlic", "parsley", "salt"});
}

TEST_CASE("all ingredients that bring an allergen are named, with what comes with it") {
  TestKitchen kitchen = supper_kitchen();
  kitchen.book.ingredients.change(
      "garlic", [&](Ingredient& ingredient) { ingredient.allergens = {"wheat"}; });
  const RecipeAllergens bread =
      allergens_of(kitchen.book.recipe("flat bread"), kitchen.book, allergen_rows());
  REQUIRE(bread.found.size() == 3);
  CHECK(bread.found[0].key == "cereals containing gluten");
  CHECK(bread.found[2].key == "wheat");
  CHECK(bread.found[2].ingredients == std::vector<std::string>{"flour", "garlic"});
}

TEST_CASE("recipes that use each other in a circle come to an end") {
  TestKitchen kitchen = supper_kitchen();
  kitchen.book.recipes.change("anchovy paste", [&](Recipe& recipe) {
    recipe.lines.push_back(line("green sauce", "1 tbsp"));
  });
  CHECK(allergens_of(kitchen.book.recipe("green sauce"), kitchen.book).found.size() == 1);
}
