// SPDX-License-Identifier: MIT
// Rounded lines that add up.

#include "platewright/number/apportion.hpp"

#include "support/catch.hpp"

using namespace platewright;

TEST_CASE("a third three times is a whole") {
  const Rational third = fraction(1, 3);
  const auto cents = apportion({third, third, third}, fraction(1, 100));
  CHECK(cents[0] == fraction(34, 100));
  CHECK(cents[1] == fraction(33, 100));
  CHECK(cents[2] == fraction(33, 100));
}

TEST_CASE("the step left over goes to the largest remainder, not to the largest line") {
  const auto whole = apportion({fraction(101, 10), fraction(16, 10), fraction(13, 10)}, 1);
  CHECK(whole == std::vector<Rational>{10, 2, 1});
}

TEST_CASE("lines that are on steps already stay") {
  const std::vector<Rational> lines{3, 0, 5};
  CHECK(apportion(lines, 1) == lines);
  CHECK(apportion({}, 1).empty());
}

TEST_CASE("credits below 0 add up too") {
  const auto whole = apportion({fraction(-7, 2), fraction(11, 4), fraction(5, 4)}, 1);
  CHECK(whole[0] + whole[1] + whole[2] == 1);
  CHECK(whole == std::vector<Rational>{-3, 3, 1});
}
