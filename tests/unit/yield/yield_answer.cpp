// SPDX-License-Identifier: MIT
#include "platewright/yield/yield_answer.hpp"

#include "support/catch.hpp"
#include "support/problem_of.hpp"
#include "support/weights.hpp"

using namespace platewright;
using namespace platewright::test;

namespace {

Ladder roast_yield(const std::optional<Rational>& deviation) {
  Spread spread;
  if (deviation) spread = {100, deviation, {}, {}};
  return Ladder({{Stage::purchased, Stage::served, fraction(1, 2), {}, "", spread, {}, false}});
}

}  // namespace

TEST_CASE("only what has its figures is answered") {
  const YieldAnswer nothing = answer(roast_yield({}), {});
  CHECK_FALSE(nothing.down);
  CHECK_FALSE(nothing.up);
  YieldQuestion question;
  question.buy = pounds(20);
  const YieldAnswer down = answer(roast_yield({}), question);
  REQUIRE(down.down);
  CHECK(down.down->walk.back().mass == pounds(10));
  CHECK_FALSE(down.down->serves);
  CHECK_FALSE(down.down->portion_each);
}

TEST_CASE("a weight and guests give the portion, unless a portion is named") {
  YieldQuestion question;
  question.buy = pounds(20);
  question.guests = 40;
  CHECK(answer(roast_yield({}), question).down->portion_each == ounces(4));
  question.portion = ounces(5);
  const YieldAnswer named = answer(roast_yield({}), question);
  CHECK_FALSE(named.down->portion_each);
  CHECK(named.down->serves->portions == 32);
  CHECK(named.up->need.purchased == pounds(25));
}

TEST_CASE("how sure is answered for a weight, for pieces, and not where it can't be told") {
  YieldQuestion question;
  question.guests = 40;
  question.portion = ounces(4);
  question.probability = fraction(95, 100);
  const YieldAnswer weight = answer(roast_yield(fraction(3, 100)), question);
  CHECK(weight.up->sure->can_tell());
  CHECK(*weight.up->sure->purchased > weight.up->need.purchased);
  CHECK_FALSE(answer(roast_yield({}), question).up->sure->can_tell());
  question.piece = pounds(5);
  question.piece_spread = ounces(8);
  const YieldAnswer pieces = answer(roast_yield(fraction(3, 100)), question);
  CHECK_FALSE(pieces.up->sure);
  CHECK(pieces.up->pieces->pieces == 4);
  CHECK(pieces.up->sure_pieces->sure->pieces == 5);
}
