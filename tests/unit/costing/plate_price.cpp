// SPDX-License-Identifier: MIT
#include "platewright/costing/plate_price.hpp"

#include "support/catch.hpp"
#include "support/problem_of.hpp"
#include "support/weights.hpp"

using namespace platewright;
using namespace platewright::test;

TEST_CASE("a plate with its Q factor against a price") {
  PlatePriceQuestion question;
  question.q_factor = fraction(1, 20);
  question.price = money("20.00");
  question.food_share = fraction(3, 10);
  const PlatePrice answer = plate_price(money("6.00"), question);
  CHECK(answer.q == money("0.30"));
  CHECK(answer.with_q == money("6.30"));
  CHECK(answer.food_share == fraction(63, 200));
  CHECK(answer.left == money("13.70"));
  CHECK(answer.price == money("21.00"));
}

TEST_CASE("what is not asked is not answered") {
  const PlatePrice answer = plate_price(money("6.00"), {});
  CHECK(answer.with_q == money("6.00"));
  CHECK(!answer.food_share);
  CHECK(!answer.left);
  CHECK(!answer.price);
}

TEST_CASE("a price of nothing and shares outside their range are refused") {
  CHECK(problem_of([] { food_cost_share(money("6"), Money()); }).id == "number-not-positive");
  CHECK(problem_of([] { price_at_food_cost(money("6"), 0); }).id == "share-out-of-range");
  CHECK(problem_of([] { price_at_food_cost(money("6"), 2); }).id == "share-out-of-range");
  CHECK(problem_of([] { plate_price(money("6"), {2, {}, {}}); }).id == "share-out-of-range");
}
