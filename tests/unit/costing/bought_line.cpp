// SPDX-License-Identifier: MIT
#include "platewright/costing/bought_line.hpp"

#include "support/catch.hpp"
#include "support/problem_of.hpp"
#include "support/supper.hpp"

using namespace platewright;
using namespace platewright::test;

namespace {

std::optional<Bought> bought(const TestKitchen& kitchen, const ScaledRecipe& scaled,
                             std::size_t index) {
  const ScaledLine& line = scaled.lines.at(index);
  return bought_for(scaled, line, kitchen.book.ingredient(line.line->name), kitchen.book,
                    kitchen.prices.find(line.line->name)->purchases.front());
}

}  // namespace

TEST_CASE("the cut of a recipe of whole pieces counts with the pieces' weight") {
  TestKitchen kitchen = supper_kitchen();
  Recipe recipe = kitchen.book.recipe("roast lamb");
  const auto three = bought(
      kitchen, scale(recipe, plan_for_pieces(recipe, 3, kitchen.book, pounds(8)), kitchen.book), 0);
  CHECK(to_mass(three->amount) == pounds(24));
  CHECK(three->yield == 1);

  // The line names the trimmed weight; what is paid for is the leg.
  recipe.lines[0].amount = amount("6 lb");
  const auto trimmed =
      bought(kitchen, scale(recipe, plan_for_pieces(recipe, 2, kitchen.book), kitchen.book), 0);
  CHECK(to_mass(trimmed->amount) == pounds(15));
  CHECK(trimmed->yield == fraction(4, 5));
}

TEST_CASE("a cut in a recipe without pieces is bought as it is written") {
  TestKitchen kitchen = supper_kitchen();
  kitchen.add(recipe_for("stew", 4, {line("lamb leg", "3 lb")}));
  const Recipe& recipe = kitchen.book.recipe("stew");
  const auto meat =
      bought(kitchen, scale(recipe, plan_for_factor(recipe, 2, kitchen.book), kitchen.book), 0);
  CHECK(to_mass(meat->amount) == pounds(6));
  CHECK(piece_line(recipe, kitchen.book) == nullptr);
}

TEST_CASE("the piece line is the first cut, wherever it stands") {
  TestKitchen kitchen = supper_kitchen();
  Recipe recipe = kitchen.book.recipe("roast lamb");
  std::swap(recipe.lines[0], recipe.lines[2]);
  CHECK(piece_line(recipe, kitchen.book) == &recipe.lines[2]);
  CHECK(supplied_piece_weight(recipe, kitchen.book, kitchen.prices) == ounces(120));
  kitchen.prices.entries["lamb leg"].purchases = {pack("40 lb", "300")};
  CHECK(!supplied_piece_weight(recipe, kitchen.book, kitchen.prices));
}

TEST_CASE("a line to taste takes no known amount") {
  TestKitchen kitchen = supper_kitchen();
  kitchen.prices.entries["salt"].purchases = {pack("1 kg", "1.00")};
  const Recipe& recipe = kitchen.book.recipe("roast lamb");
  CHECK(!bought(kitchen, scale(recipe, plan_for_factor(recipe, 1, kitchen.book), kitchen.book), 4));
}

TEST_CASE("an amount that can't be bought is reported at its line") {
  TestKitchen kitchen = supper_kitchen();
  Recipe recipe = kitchen.book.recipe("flat bread");
  recipe.lines[0] = line("flour", "3 cups");
  recipe.lines[0].place.line = 17;
  const Problem problem = problem_of([&] {
    bought(kitchen, scale(recipe, plan_for_factor(recipe, 1, kitchen.book), kitchen.book), 0);
  });
  CHECK(problem.id == "density-missing");
  CHECK(problem.place.line == 17);
}
