// SPDX-License-Identifier: MIT
// Recipes that refer to each other.

#include "platewright/recipe/recipe_book.hpp"

#include "support/catch.hpp"
#include "support/kitchen.hpp"
#include "support/problem_of.hpp"

using namespace platewright;
using namespace platewright::test;

using Names = std::vector<std::string>;

namespace {

RecipeBook book_of(const std::vector<std::pair<std::string, Names>>& uses) {
  TestKitchen out;
  for (const auto& [name, below] : uses) {
    Recipe recipe = recipe_making(name, "1 qt", {});
    for (const std::string& other : below) recipe.lines.push_back(line(other, "1 cup"));
    out.add(std::move(recipe));
  }
  return out.book;
}

}  // namespace

TEST_CASE("recipes that lead down have no cycle") {
  CHECK_FALSE(find_cycle(book_of({})));
  CHECK_FALSE(find_cycle(book_of({{"a", {"b", "c"}}, {"b", {"c"}}, {"c", {}}})));
}

TEST_CASE("a recipe that uses itself") {
  CHECK(*find_cycle(book_of({{"a", {"a"}}})) == Names{"a", "a"});
}

TEST_CASE("a cycle is given without the way that leads to it") {
  CHECK(*find_cycle(book_of({{"a", {"b"}}, {"b", {"c"}}, {"c", {"b"}}})) == Names{"b", "c", "b"});
}

TEST_CASE("a name that is not there names the nearest") {
  TestKitchen kitchen;
  kitchen.add(ingredient("garlic"));
  kitchen.add(recipe_making("green sauce", "1 qt", {}));
  CHECK(problem_of([&] { kitchen.book.ingredient("galric"); }).remedy ==
        "did you mean \"garlic\"? If not, add it to the larder, or name the file that holds it, as "
        "in `with: [larder.yaml]`");
  CHECK(problem_of([&] { kitchen.book.recipe("gren sauce"); }).remedy ==
        "did you mean \"green sauce\"? If not, add the recipe's file to `with`");
  CHECK(problem_of([&] { kitchen.book.ingredient("zucchini"); }).remedy ==
        "add it to the larder, or name the file that holds it, as in `with: [larder.yaml]`");
  CHECK(problem_of([&] { kitchen.book.recipe("zucchini"); }).id == "name-unknown");
}
