// SPDX-License-Identifier: MIT
// Rounding by name.

#include "platewright/number/round.hpp"

#include "support/catch.hpp"

using namespace platewright;

TEST_CASE("floor and ceiling of negative values too") {
  CHECK(floor_of(fraction(7, 2)) == 3);
  CHECK(floor_of(fraction(-7, 2)) == -4);
  CHECK(floor_of(-4) == -4);
  CHECK(ceiling_of(fraction(7, 2)) == 4);
  CHECK(ceiling_of(fraction(-7, 2)) == -3);
  CHECK(ceiling_of(4) == 4);
}

TEST_CASE("a value on a step stays there by every rule") {
  for (const Rounding rounding :
       {Rounding::down, Rounding::up, Rounding::half_up, Rounding::half_even}) {
    CHECK(round_to(fraction(3, 4), fraction(1, 4), rounding) == fraction(3, 4));
    CHECK(round_to(0, fraction(1, 4), rounding) == 0);
  }
}

TEST_CASE("each rule between two steps") {
  const Rational quarter = fraction(1, 4);
  CHECK(down_to(fraction(9, 10), quarter) == fraction(3, 4));
  CHECK(up_to(fraction(76, 100), quarter) == 1);
  CHECK(half_up(fraction(87, 100), quarter) == fraction(3, 4));
  CHECK(half_up(fraction(88, 100), quarter) == 1);
}

TEST_CASE("ties") {
  CHECK(half_up(fraction(1, 2), 1) == 1);
  CHECK(half_up(fraction(3, 2), 1) == 2);
  CHECK(half_up(fraction(-1, 2), 1) == 0);
  CHECK(half_even(fraction(1, 2), 1) == 0);
  CHECK(half_even(fraction(3, 2), 1) == 2);
  CHECK(half_even(fraction(5, 2), 1) == 2);
  CHECK(half_even(fraction(-1, 2), 1) == 0);
  CHECK(half_even(fraction(-3, 2), 1) == -2);
  CHECK(half_even(fraction(501, 1000), 1) == 1);
}

TEST_CASE("a step need not divide 1") {
  CHECK(up_to(7, 5) == 10);
  CHECK(down_to(7, fraction(2, 3)) == fraction(20, 3));
  CHECK(steps_of(7, fraction(2, 3), Rounding::up) == 11);
}
