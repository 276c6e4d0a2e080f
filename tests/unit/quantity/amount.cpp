// SPDX-License-Identifier: MIT
// Amounts of the run-time table.

#include "platewright/quantity/amount.hpp"

#include "support/catch.hpp"
#include "support/kitchen.hpp"
#include "support/problem_of.hpp"

using namespace platewright;
using namespace platewright::test;

namespace {

Unit unit(const char* name) {
  return unit_table().find(name, MeasuringSystem::us);
}

}  // namespace

TEST_CASE("an amount in another unit of its dimension") {
  CHECK(in_unit(amount("1 gal"), unit("cup")).number == 16);
  CHECK(in_unit(amount("1 cup"), unit("gal")).number == fraction(1, 16));
  CHECK(in_unit(amount("1 dozen"), unit("each")).number == 12);
}

TEST_CASE("amounts of two dimensions, or of two kinds of pieces, do not mix") {
  CHECK(problem_of([] { in_unit(amount("1 lb"), unit("cup")); }).id == "units-do-not-mix");
  CHECK(problem_of([] { sum(amount("1 lb"), amount("1 cup")); }).id == "units-do-not-mix");
  CHECK(problem_of([] { in_unit(amount("1 clove"), unit("each")); }).id == "units-do-not-mix");
}

TEST_CASE("a sum is in the unit of its first part") {
  CHECK(sum(amount("1 lb"), amount("8 oz")) == amount("1 1/2 lb"));
  CHECK(sum(amount("8 oz"), amount("1 lb")) == amount("24 oz"));
}

TEST_CASE("the symbol follows the number") {
  CHECK(amount_text(amount("1 cup")) == "1 cup");
  CHECK(amount_text(amount("2 cups")) == "2 cups");
  CHECK(amount_text(amount("1/2 cup")) == "1/2 cup");
  CHECK(amount_text(amount("1 1/2 cup")) == "1 1/2 cups");
}

TEST_CASE("a range is scaled at both ends, a taste not at all") {
  const LineAmount range = LineAmount::range(amount("2 tbsp"), amount("3 tbsp"));
  const LineAmount doubled = scaled(range, 2);
  CHECK(doubled.low() == amount("4 tbsp"));
  CHECK(doubled.high() == amount("6 tbsp"));
  CHECK(scaled(LineAmount{}, 2).to_taste());
}
