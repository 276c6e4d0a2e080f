// SPDX-License-Identifier: MIT
// How contents are spread over vessels and batches.

#include "platewright/recipe/filling.hpp"

#include "support/catch.hpp"

using namespace platewright;

namespace {

using Parts = std::vector<FilledAlike>;

}  // namespace

TEST_CASE("ten legs by four are four, three and three") {
  const Filling tubs = spread_over(10, 4, true);
  CHECK(tubs.count == 3);
  CHECK(tubs.parts == Parts{{1, 4}, {2, 3}});
}

TEST_CASE("pieces that come out even are in parts that are alike") {
  CHECK(spread_over(12, 4, true).parts == Parts{{3, 4}});
  CHECK(spread_over(1, 4, true).parts == Parts{{1, 1}});
}

TEST_CASE("a part of a piece is in the last") {
  const Filling tubs = spread_over(fraction(31, 8), 2, true);
  CHECK(tubs.count == 2);
  CHECK(tubs.parts == Parts{{1, 2}, {1, fraction(15, 8)}});
  CHECK(spread_over(fraction(1, 2), 2, true).parts == Parts{{1, fraction(1, 2)}});
}

TEST_CASE("half a piece more in one that holds whole ones does not count") {
  CHECK(spread_over(9, fraction(9, 2), true).count == 3);
}

TEST_CASE("what can be parted is in equal parts") {
  const Filling pans = spread_over(75, fraction(34, 5), false);
  CHECK(pans.count == 12);
  CHECK(pans.parts == Parts{{12, fraction(75, 12)}});
}
