// SPDX-License-Identifier: MIT
// The two-thirds power: exact where it can be, near enough elsewhere.

#include "platewright/recipe/power.hpp"

#include "platewright/number/write.hpp"
#include "support/catch.hpp"

using namespace platewright;

TEST_CASE("the power is exact where the cube root is rational") {
  CHECK(two_thirds_power(1) == 1);
  CHECK(two_thirds_power(8) == 4);
  CHECK(two_thirds_power(fraction(27, 64)) == fraction(9, 16));
  CHECK(two_thirds_power(fraction(1, 1000)) == fraction(1, 100));
  CHECK(two_thirds_power(fraction(1000000000000, 1)) == 100000000);
}

// 2^(2/3) = 1.587401051968199474751705639272... (the cube root of 4, OEIS A005480).
TEST_CASE("twice the weight has 1.587 times the surface") {
  CHECK(as_decimal(two_thirds_power(2), 15, Rounding::down) == "1.587401051968199");
}

TEST_CASE("the cube of the power is the square of the ratio to 15 digits") {
  for (const Rational& ratio : {Rational(2), Rational(3), fraction(3, 2), fraction(1, 7),
                                fraction(45359237, 50000000), fraction(1, 1000001)}) {
    const Rational power = two_thirds_power(ratio);
    const Rational wanted = ratio * ratio;
    const Rational error = (wanted - power * power * power) / wanted;
    INFO(as_fraction(ratio));
    CHECK(error >= 0);
    CHECK(error < fraction(3, 1000000000000000));
  }
}
