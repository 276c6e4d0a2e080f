// SPDX-License-Identifier: MIT
#include "platewright/number/rational.hpp"

#include <limits>

#include "support/catch.hpp"

using namespace platewright;

namespace {

constexpr std::int64_t largest = std::numeric_limits<std::int64_t>::max();

}  // namespace

TEST_CASE("a number grows past what is kept in place and comes back") {
  Rational number = largest;
  number += 1;
  CHECK(numerator_of(number) == Integer(largest) + 1);
  CHECK(number > Rational(largest));
  CHECK(number != Rational(largest));
  number -= 1;
  CHECK(number == Rational(largest));
  const Rational part = Rational(1) / largest / largest;
  CHECK(denominator_of(part) == Integer(largest) * largest);
  CHECK(part * largest == fraction(1, largest));
  CHECK(part > 0);
}

TEST_CASE("the smallest whole numbers and the largest are what they are") {
  const Rational least = std::numeric_limits<std::int64_t>::min();
  CHECK(numerator_of(least) == Integer(std::numeric_limits<std::int64_t>::min()));
  CHECK(-least == Rational(largest) + 1);
  const Rational most = std::numeric_limits<std::uint64_t>::max();
  CHECK(numerator_of(most) == Integer(std::numeric_limits<std::uint64_t>::max()));
  CHECK(most / most == 1);
}

TEST_CASE("a number is copied and left behind as a number, large or not") {
  const Rational large = Rational(largest) * largest;
  Rational copy = large;
  copy -= 1;
  CHECK(copy < large);
  copy = large;
  CHECK(copy == large);
  Rational moved = std::move(copy);
  CHECK(moved == large);
  copy = 3;
  CHECK(copy == 3);
  moved = fraction(1, 3);
  CHECK(moved + moved + moved == 1);
  moved += moved;
  CHECK(moved == fraction(2, 3));
  const Rational& itself = moved;
  moved /= itself;
  CHECK(moved == 1);
}

TEST_CASE("nothing divides by 0") {
  CHECK_THROWS_AS(Rational(1) / 0, std::overflow_error);
  CHECK_THROWS_AS(Rational(largest) * largest / 0, std::overflow_error);
  CHECK_THROWS_AS(Rational(Integer(1), Integer(0)), std::overflow_error);
  CHECK(Rational(0) / 7 == 0);
  CHECK(denominator_of(Rational(0) / 7) == 1);
}

TEST_CASE("a sign below the bar goes above it") {
  const Rational number(Integer(3), Integer(-6));
  CHECK(numerator_of(number) == -1);
  CHECK(denominator_of(number) == 2);
  CHECK(number < 0);
}
