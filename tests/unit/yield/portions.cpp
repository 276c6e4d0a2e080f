// SPDX-License-Identifier: MIT
#include "platewright/yield/portions.hpp"

#include "support/catch.hpp"
#include "support/problem_of.hpp"
#include "support/weights.hpp"

using namespace platewright;
using namespace platewright::test;

namespace {
Ladder half_yield() {
  return Ladder({{Stage::purchased, Stage::served, fraction(1, 2), {}, "", {}, {}, false}});
}
}  // namespace

TEST_CASE("portions are rounded down and the rest is left over") {
  const PortionsServed served = portions_from(grams(1000), grams(180));
  CHECK(served.portions == 5);
  CHECK(served.left_over == grams(100));
  const PortionsServed exact = portions_from(half_yield(), grams(1800), grams(180));
  CHECK(exact.served == grams(900));
  CHECK(exact.portions == 5);
  CHECK(exact.left_over == Mass{});
  CHECK(portions_from(Mass{}, grams(180)).portions == 0);
}

TEST_CASE("what to buy is the portions over the yield, exactly") {
  const WeightToBuy need = weight_to_buy(half_yield(), fraction(151, 2), grams(200));
  CHECK(need.served == grams(15100));
  CHECK(need.purchased == grams(30200));
}

TEST_CASE("whole pieces cover the need") {
  const WeightToBuy need = weight_to_buy(half_yield(), 10, grams(200));
  const PiecesToBuy pieces = pieces_to_buy(half_yield(), need, grams(1500));
  CHECK(need.purchased == grams(4000));
  CHECK(pieces.pieces == 3);
  CHECK(pieces.purchased == grams(4500));
  CHECK(pieces.served == grams(2250));
  CHECK(pieces.serves == 11);
  CHECK(pieces.surplus_purchased == grams(500));
  CHECK(pieces.surplus_served == grams(250));
  CHECK(pieces_to_buy(half_yield(), need, grams(2000)).pieces == 2);
}

TEST_CASE("a weight gives each guest a portion") {
  CHECK(portion_for(half_yield(), grams(5000), 10) == grams(250));
}

TEST_CASE("portions, guests and pieces of nothing are refused") {
  CHECK(problem_of([] { portions_from(grams(1), grams(0)); }).id == "number-not-positive");
  CHECK(problem_of([] { portions_from(grams(1), grams(0)); }).found == "a portion of 0 g (0 oz)");
  CHECK(problem_of([] { portions_from(grams(-1), grams(1)); }).id == "number-not-positive");
  CHECK(problem_of([] { weight_to_buy(half_yield(), 0, grams(1)); }).found ==
        "a number of portions of 0");
  CHECK(problem_of([] { weight_to_buy(half_yield(), 1, grams(0)); }).id == "number-not-positive");
  CHECK(problem_of([] { portion_for(half_yield(), grams(1), 0); }).id == "number-not-positive");
  CHECK(problem_of([] { portion_for(half_yield(), grams(0), 1); }).id == "number-not-positive");
  CHECK(problem_of([] {
          pieces_to_buy(half_yield(), weight_to_buy(half_yield(), 1, grams(1)), grams(0));
        }).found == "a piece of 0 g (0 oz)");
}
