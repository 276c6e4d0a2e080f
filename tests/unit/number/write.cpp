// SPDX-License-Identifier: MIT
// Numbers as text.

#include "platewright/number/write.hpp"

#include "support/catch.hpp"

using namespace platewright;

TEST_CASE("fractions and mixed numbers are written as cooks write them") {
  CHECK(as_fraction(fraction(7, 3)) == "7/3");
  CHECK(as_fraction(fraction(6, 3)) == "2");
  CHECK(as_mixed(fraction(7, 3)) == "2 1/3");
  CHECK(as_mixed(fraction(1, 3)) == "1/3");
  CHECK(as_mixed(0) == "0");
  CHECK(as_mixed(fraction(-7, 3)) == "-2 1/3");
}

TEST_CASE("a decimal is rounded by the rule named") {
  const Rational tie = fraction(5, 2);
  CHECK(as_decimal(tie, 0) == "3");
  CHECK(as_decimal(tie, 0, Rounding::half_even) == "2");
  CHECK(as_decimal(tie, 0, Rounding::down) == "2");
  CHECK(as_decimal(tie, 0, Rounding::up) == "3");
  CHECK(as_decimal(fraction(1, 3), 4) == "0.3333");
  CHECK(as_decimal(fraction(2, 3), 4) == "0.6667");
}

TEST_CASE("a decimal has all its places") {
  CHECK(as_decimal(2, 2) == "2.00");
  CHECK(as_decimal(fraction(1, 100), 2) == "0.01");
  CHECK(as_decimal(0, 2) == "0.00");
  CHECK(as_decimal(fraction(-1, 20), 2) == "-0.05");
  CHECK(as_decimal(fraction(-1, 1000), 2) == "0.00");
}

TEST_CASE("a short decimal drops zeros at the end and nothing else") {
  CHECK(as_short_decimal(fraction(3, 2), 3) == "1.5");
  CHECK(as_short_decimal(2, 3) == "2");
  CHECK(as_short_decimal(100, 0) == "100");
  CHECK(as_short_decimal(100, 2) == "100");
}

TEST_CASE("the exact form is a decimal where one ends") {
  CHECK(as_exact(fraction(1, 8)) == "0.125");
  CHECK(as_exact(fraction(45359237, 100000)) == "453.59237");
  CHECK(as_exact(fraction(1, 3)) == "1/3");
  CHECK(as_exact(fraction(-1, 40)) == "-0.025");
  CHECK(as_exact(12) == "12");
}

TEST_CASE("a decimal that repeats has its repeating part in brackets") {
  CHECK(as_repeating_decimal(fraction(5, 6)) == "0.8(3)");
  CHECK(as_repeating_decimal(fraction(1, 3)) == "0.(3)");
  CHECK(as_repeating_decimal(fraction(1, 7)) == "0.(142857)");
  CHECK(as_repeating_decimal(fraction(-7, 6)) == "-1.1(6)");
  CHECK(as_repeating_decimal(fraction(1, 12)) == "0.08(3)");
}

TEST_CASE("a decimal that ends has no brackets") {
  CHECK(as_repeating_decimal(fraction(1, 8)) == "0.125");
  CHECK(as_repeating_decimal(9) == "9");
}

// 1/61 repeats after 60 digits, 1/97 after 96.
TEST_CASE("a repeating part that is too long gives the fraction") {
  CHECK(as_repeating_decimal(fraction(1, 61)).size() == 64);
  CHECK(as_repeating_decimal(fraction(1, 97)) == "1/97");
  CHECK(as_repeating_decimal(fraction(1, 7), 5) == "1/7");
  CHECK(as_repeating_decimal(fraction(1, 7), 6) == "0.(142857)");
}

TEST_CASE("which fractions have a decimal that ends") {
  CHECK(has_finite_decimal(fraction(3, 160)));
  CHECK(has_finite_decimal(0));
  CHECK_FALSE(has_finite_decimal(fraction(1, 30)));
}
