// SPDX-License-Identifier: MIT
#include "platewright/costing/round_money.hpp"

#include "support/catch.hpp"
#include "support/weights.hpp"

using namespace platewright;
using namespace platewright::test;

TEST_CASE("the minor unit follows the currency's decimals") {
  CHECK(minor_unit(Currency("USD")) == money("0.01"));
  CHECK(minor_unit(Currency("JPY")) == money("1"));
  CHECK(minor_unit(Currency("KWD")) == money("0.001"));
}

TEST_CASE("money is rounded to a step by name") {
  CHECK(round_money(money("1.005"), money("0.01"), Rounding::half_up) == money("1.01"));
  CHECK(round_money(money("1.001"), money("0.05"), Rounding::up) == money("1.05"));
  CHECK(round_money(money("1.05"), money("0.05"), Rounding::up) == money("1.05"));
  CHECK(round_money(money("1.09"), money("0.05"), Rounding::down) == money("1.05"));
}
