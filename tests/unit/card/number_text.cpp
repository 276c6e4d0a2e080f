// SPDX-License-Identifier: MIT
#include "platewright/card/figures.hpp"
#include "support/catch.hpp"

using namespace platewright;

TEST_CASE("money is written to the minor unit, with commas from ten thousand on") {
  CHECK(money_text(fraction(25, 3), Currency("USD")) == "8.33");
  CHECK(money_text(fraction(1, 200), Currency("USD")) == "0.01");
  CHECK(money_text(Rational(9999), Currency("USD")) == "9999.00");
  CHECK(money_text(Rational(10000), Currency("USD")) == "10,000.00");
  CHECK(money_text(Rational(-1234567), Currency("USD")) == "-1,234,567.00");
  CHECK(money_text(Rational(123456), Currency("JPY")) == "123,456");
}

TEST_CASE("shares are written as per cent") {
  CHECK(percent_text(fraction(5, 8)) == "62.5 %");
  CHECK(percent_text(fraction(1, 3), 2) == "33.33 %");
  CHECK(percent_text(Rational(1)) == "100 %");
  CHECK(signed_percent_text(fraction(-12, 1000)) == "-1.2 %");
  CHECK(signed_percent_text(fraction(42, 1000)) == "+4.2 %");
  CHECK(signed_percent_text(fraction(1, 100000)) == "0 %");
}

// 165 F and 145 F with their Celsius: United States Department of Agriculture, Food Safety and
// Inspection Service, Safe Minimum Internal Temperature Chart (73.9 and 62.8, whole degrees here).
TEST_CASE("temperatures are written on both scales") {
  CHECK(fahrenheit_text(Temperature::fahrenheit(165), Rounding::up) == "165 \u00B0F (74 \u00B0C)");
  // A minimum is never shown lower than it is, a maximum never higher.
  CHECK(fahrenheit_text(Temperature::fahrenheit(145), Rounding::up) == "145 \u00B0F (63 \u00B0C)");
  CHECK(fahrenheit_text(Temperature::fahrenheit(130), Rounding::up) == "130 \u00B0F (55 \u00B0C)");
  CHECK(fahrenheit_text(Temperature::fahrenheit(45), Rounding::down) == "45 \u00B0F (7 \u00B0C)");
  CHECK(celsius_text(Temperature::celsius(63), Rounding::up) == "63 \u00B0C (146 \u00B0F)");
  CHECK(celsius_text(Temperature::celsius(0), Rounding::up) == "0 \u00B0C (32 \u00B0F)");
  CHECK(celsius_text(Temperature::celsius(-18), Rounding::down) == "-18 \u00B0C (-1 \u00B0F)");
}

TEST_CASE("time spans are written in the units that a kitchen says") {
  CHECK(duration_text(0, Rounding::up) == "0 min");
  CHECK(duration_text(fraction(3, 4), Rounding::up) == "45 s");
  CHECK(duration_text(fraction(134, 60), Rounding::up) == "2 min 14 s");
  CHECK(duration_text(fraction(8, 1000), Rounding::up) == "1 s");
  CHECK(duration_text(fraction(599, 60), Rounding::up) == "9 min 59 s");
  CHECK(duration_text(25, Rounding::up) == "25 min");
  CHECK(duration_text(fraction(251, 10), Rounding::up) == "26 min");
  CHECK(duration_text(fraction(251, 10), Rounding::down) == "25 min");
  CHECK(duration_text(85, Rounding::up) == "1 h 25 min");
  CHECK(duration_text(48 * 60, Rounding::up) == "48 h");
  CHECK(duration_text(72 * 60, Rounding::up) == "3 d");
  CHECK(duration_text(73 * 60 + 5, Rounding::up) == "3 d 1 h 5 min");
}

TEST_CASE("a cell's exact value is in the unit that it shows") {
  const Cell percent = percent_cell(fraction(1, 3));
  CHECK(percent.text == "33.3 %");
  CHECK(percent.exact == fraction(100, 3));
  const Cell money = money_cell(Rational(12345), Currency("USD"));
  CHECK(money.text == "12,345.00 USD");
  CHECK(money.shown == "12345.00");
  const Cell pull = fahrenheit_cell(Temperature::fahrenheit(130), Rounding::up);
  CHECK(pull.exact == Rational(130));
  CHECK(pull.shown == "130");
}

TEST_CASE("two more places are taken where they say a figure exactly") {
  CHECK(exact_places(fraction(12, 5), 2) == 2U);
  CHECK(exact_places(fraction(2385, 1000), 2) == 3U);
  CHECK(exact_places(fraction(9435, 10'000), 2) == 4U);
  CHECK_FALSE(exact_places(fraction(1, 3), 2));
  CHECK_FALSE(exact_places(fraction(1, 32), 2));
}
