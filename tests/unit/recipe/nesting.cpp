// SPDX-License-Identifier: MIT
// How deep recipes are made of each other.

#include "platewright/recipe/nesting.hpp"

#include "support/catch.hpp"
#include "support/kitchen.hpp"
#include "support/problem_of.hpp"

using namespace platewright;
using namespace platewright::test;

namespace {

std::string level(int number) {
  return "level " + std::to_string(number);
}

/// Each recipe is made of the next.
RecipeBook chain_of(int levels) {
  TestKitchen out;
  for (int i = 1; i <= levels; ++i) {
    Recipe recipe = recipe_making(level(i), "1 qt", {});
    if (i < levels) recipe.lines.push_back(line(level(i + 1), "1 cup"));
    out.add(std::move(recipe));
  }
  return out.book;
}

}  // namespace

TEST_CASE("a hundred levels of recipes are walked, and no more") {
  CHECK(problem_of([] { check_nesting(chain_of(100)); }).id.empty());
  const Problem problem = problem_of([] { check_nesting(chain_of(101)); });
  CHECK(problem.id == "recipes-too-deep");
  CHECK(problem.found == "below \"level 1\" more than 100 recipes, each made of the next");
}

TEST_CASE("only what stands below the recipes asked for counts") {
  const RecipeBook book = chain_of(101);
  CHECK(problem_of([&] { check_nesting(book, {level(2), "nothing of the book"}); }).id.empty());
  CHECK(problem_of([&] { check_nesting(book, {level(1)}); }).id == "recipes-too-deep");
}

TEST_CASE("a chain of any length is answered") {
  CHECK(problem_of([] { check_nesting(chain_of(20000)); }).id == "recipes-too-deep");
}

TEST_CASE("the longest way down counts, not the number of recipes") {
  TestKitchen kitchen;
  Recipe top = recipe_making("top", "1 qt", {});
  for (int i = 0; i < 500; ++i) {
    kitchen.add(recipe_making(level(i), "1 qt", {}));
    top.lines.push_back(line(level(i), "1 cup"));
  }
  kitchen.add(top);
  CHECK(problem_of([&] { check_nesting(kitchen.book); }).id.empty());
}
