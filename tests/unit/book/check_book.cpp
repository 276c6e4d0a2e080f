// SPDX-License-Identifier: MIT
// A book that a program wrote down, checked without a file.

#include "platewright/book/check_book.hpp"

#include "platewright/quantity/literals.hpp"
#include "support/catch.hpp"
#include "support/kitchen.hpp"

using namespace platewright;
using namespace platewright::literals;
using namespace platewright::test;

namespace {

std::vector<std::string> ids_of(const Book& book) {
  std::vector<std::string> out;
  const ProblemList problems = check(book);
  for (const Problem& problem : problems.all()) out.push_back(problem.id);
  return out;
}

Book cured_leg() {
  Book book;
  book.add(ingredient("lamb leg", book.tables.yields.cut("lamb leg, bone-in, roasted")),
           builders::piece(9_lb, 45_usd));
  book.add(ingredient("curing salt"), builders::pack(1_kg, 4_usd));
  book.add(recipe_for("cured leg", 10,
                      {line("lamb leg", 6_lb),
                       line("curing salt", builders::share_of(fraction(1, 40), {"meat"}))}));
  return book;
}

}  // namespace

TEST_CASE("an empty book has the built-in tables and no problems") {
  const Book book;
  CHECK(book.tables.units.look_up("lb", MeasuringSystem::us).has_value());
  CHECK(ids_of(book).empty());
}

TEST_CASE("a book written by a program is checked as one that was read") {
  Book book = cured_leg();
  CHECK(ids_of(book).empty());
  book.add(recipe_for("stew", 4, {line("saffron", 1_g), line("cured leg", 2_lb)}));
  CHECK(ids_of(book) == std::vector<std::string>{"name-unknown", "recipe-no-amount"});
}

TEST_CASE("a share of nothing is a problem and never the factor 1") {
  Book book = cured_leg();
  book.recipes.recipes.change("cured leg", [](Recipe& recipe) {
    recipe.lines[1].amount = builders::share_of(fraction(1, 40), {"mutton"});
  });
  CHECK(ids_of(book) == std::vector<std::string>{"share-of-unknown"});
}

TEST_CASE("checking changes nothing") {
  const Book book = cured_leg();
  const Recipe before = book.recipes.recipe("cured leg");
  check(book);
  const Recipe& after = book.recipes.recipe("cured leg");
  REQUIRE(after.lines.size() == before.lines.size());
  CHECK(after.lines[1].amount == before.lines[1].amount);
  CHECK(after.makes.portions == before.makes.portions);
}
