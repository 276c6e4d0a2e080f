// SPDX-License-Identifier: MIT
// The price of a unit keeps its digits.

#include "card/sheets/shared.hpp"
#include "support/catch.hpp"
#include "support/kitchen.hpp"

using namespace platewright;
using namespace platewright::test;

TEST_CASE("a price is in cents unless that would be off by more than half a per cent") {
  CHECK(card::unit_price_digits(fraction(895, 100), 2) == "8.95");
  CHECK(card::unit_price_digits(fraction(698, 75), 2) == "9.31");
  CHECK(card::unit_price_digits(fraction(5, 100), 2) == "0.05");
  CHECK(card::unit_price_digits(fraction(698, 75000), 2) == "0.0093");
  CHECK(card::unit_price_digits(fraction(1, 30000), 2) == "0.0000333");
  CHECK(card::unit_price_digits(fraction(1249, 10000), 2) == "0.125");
  CHECK(card::unit_price_digits(fraction(31, 100), 0) == "0.31");
  CHECK(card::unit_price_digits(0, 2) == "0.00");
}
