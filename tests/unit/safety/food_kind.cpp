// SPDX-License-Identifier: MIT
// Kinds of food as values.

#include "platewright/safety/food_kind.hpp"

#include "platewright/safety/undercooked.hpp"
#include "support/catch.hpp"
#include "support/problem_of.hpp"

using namespace platewright;
using platewright::test::problem_of;

TEST_CASE("a kind of food is named, or needs no minimum") {
  CHECK(FoodKind("poultry").has_minimum());
  CHECK(FoodKind("poultry").key() == "poultry");
  CHECK_FALSE(FoodKind::without_minimum().has_minimum());
  CHECK(FoodKind::without_minimum().key() == "none");
  CHECK(FoodKind("poultry") == FoodKind("poultry"));
  // A row that calls itself so is still a kind with a minimum: nothing slips off the card by name.
  CHECK(FoodKind("none") != FoodKind::without_minimum());
  CHECK(problem_of([] { FoodKind(""); }).id == "key-missing");
}

TEST_CASE("a rule for undercooked food is read as it is written, and no other") {
  for (const Undercooked rule :
       {Undercooked::never, Undercooked::advised, Undercooked::held_or_advised}) {
    CHECK(undercooked_from(name_of(rule)) == rule);
  }
  CHECK(problem_of([] { undercooked_from("sometimes"); }).id == "word-unknown");
}
