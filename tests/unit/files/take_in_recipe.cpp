// SPDX-License-Identifier: MIT
#include "platewright/files/take_in_recipe.hpp"

#include "files/schema_line.hpp"
#include "platewright/recipe/recipe_builders.hpp"
#include "support/catch.hpp"

using namespace platewright;
using reading::read_schema_line;

namespace {

Book book_with(const std::vector<std::string>& names) {
  Book out;
  for (const std::string& name : names) out.add(builders::ingredient(name));
  return out;
}

std::string amount_of(const std::string& line) {
  const auto read = read_schema_line(line, Book());
  return read ? read->amount : "nothing";
}

std::string name_of_line(const std::string& line, const Book& book) {
  const auto read = read_schema_line(line, book);
  return read ? read->name + "|" + read->preparation : "nothing";
}

}  // namespace

TEST_CASE("the longest amount at the front of a line is the one that is meant") {
  CHECK(amount_of("2 1/4 cups flour") == "2 1/4 cups");
  CHECK(amount_of("2 to 3 lb beef") == "2 to 3 lb");
  CHECK(amount_of("1 cup plus 2 tbsp sugar") == "1 cup plus 2 tbsp");
  CHECK(amount_of("2 eggs") == "2");
  CHECK(amount_of("Salt, to taste") == "to taste");
}

TEST_CASE("a line without an amount or a name is not guessed at") {
  CHECK(amount_of("a pinch of saffron") == "nothing");
  CHECK(amount_of("1 cup") == "nothing");
  CHECK(amount_of("1 (14 oz) can tomatoes") == "nothing");
  CHECK(amount_of("3 lb to 2 lb beef") == "nothing");
  CHECK(amount_of("3 lb - 2 lb beef") == "nothing");
  CHECK(amount_of("to taste") == "nothing");
  CHECK(amount_of("") == "nothing");
  CHECK(amount_of(",") == "nothing");
}

TEST_CASE("a name is the longest of the book's, else what stands before the comma") {
  const Book book = book_with({"lamb leg, bone-in", "lamb leg", "flour"});
  CHECK(name_of_line("7 lb lamb leg, bone-in, trimmed", book) == "lamb leg, bone-in|trimmed");
  CHECK(name_of_line("7 lb lamb leg, trimmed", book) == "lamb leg|trimmed");
  CHECK(name_of_line("2 cups of Flour", book) == "flour|");
  CHECK(name_of_line("2 cups rye flour, sifted", book) == "rye flour|sifted");
  CHECK_FALSE(read_schema_line("2 cups rye flour", book)->known);
}

TEST_CASE("the stage of an amount is read where it stands last, in our own words alone") {
  const Book book = book_with({"pearl barley", "beans, as bought"});
  const auto barley = read_schema_line("4 lb pearl barley, rinsed, as cooked", book);
  REQUIRE(barley);
  CHECK(barley->stage == Stage::cooked);
  CHECK(barley->preparation == "rinsed");
  const auto bare = read_schema_line("4 lb pearl barley, as purchased", book);
  REQUIRE(bare);
  CHECK(bare->stage == Stage::purchased);
  CHECK(bare->preparation.empty());
  for (const char* other : {"4 lb pearl barley, cooked", "4 lb pearl barley, as cooked as can be",
                            "4 lb pearl barley, as cooked, hot", "4 lb beans, as bought"}) {
    const auto line = read_schema_line(other, book);
    REQUIRE(line);
    CHECK_FALSE(line->stage);
  }
}
