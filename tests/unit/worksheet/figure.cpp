// SPDX-License-Identifier: MIT
#include "platewright/worksheet/figure.hpp"

#include "support/catch.hpp"
#include "support/weights.hpp"

using namespace platewright;
using namespace platewright::test;

TEST_CASE("figures are calculated with as their dimensions allow") {
  const Figure weight = pounds(12);
  const Figure price = per_pound("6.65");
  const Figure sum = money("79.80");
  CHECK(carry_out(Operation::multiply, weight, price) == Figure(money("79.80")));
  CHECK(carry_out(Operation::multiply, price, weight) == Figure(money("79.80")));
  CHECK(carry_out(Operation::divide, sum, weight) == Figure(per_pound("6.65")));
  CHECK(carry_out(Operation::divide, sum, price) == Figure(pounds(12)));
  CHECK(carry_out(Operation::divide, Figure(pounds(6)), weight) == Figure(fraction(1, 2)));
  CHECK(carry_out(Operation::subtract, weight, Figure(pounds(4))) == Figure(pounds(8)));
  CHECK(carry_out(Operation::add, sum, Figure(money("0.20"))) == Figure(money("80")));
  CHECK(carry_out(Operation::multiply, Figure(Rational(2)), weight) == Figure(pounds(24)));
}

TEST_CASE("figures that do not go together give nothing") {
  const Figure weight = pounds(12);
  const Figure sum = money("79.80");
  CHECK_FALSE(carry_out(Operation::add, weight, sum));
  CHECK_FALSE(carry_out(Operation::subtract, sum, weight));
  CHECK_FALSE(carry_out(Operation::multiply, sum, sum));
  CHECK_FALSE(carry_out(Operation::divide, weight, sum));
  CHECK_FALSE(carry_out(Operation::divide, Figure(Rational(1)), weight));
  CHECK_FALSE(carry_out(Operation::divide, sum, Figure(Mass{})));
  CHECK(ratio_of(weight, Figure(pounds(3))) == Rational(4));
  CHECK_FALSE(ratio_of(weight, sum));
}
