// SPDX-License-Identifier: MIT
// Yields and as-purchased quantities against published sheets. Each case asserts the exact figure;
// a comment says what the source prints and why it differs.

#include "platewright/worksheet/trials.hpp"
#include "platewright/yield/portions.hpp"
#include "support/catch.hpp"
#include "support/weights.hpp"

using namespace platewright;
using namespace platewright::test;

namespace {

Ladder whole_chain(const Rational& yield) {
  return Ladder({{Stage::purchased, Stage::served, yield, {}, "", {}, {}, false}});
}

/// What a trial lost, in per cent with two decimals.
std::string loss(const Mass& in, const Mass& out) {
  return as_decimal((Rational(1) - work_out({Trial{in, out}}).ratio_of_totals) * 100, 2);
}

}  // namespace

// Armed Forces Recipe Service, TM 10-412, card A-6 (2003): as purchased = edible portion x factor.
TEST_CASE("pared cucumber by the factor of card A-6") {
  const Ladder ladder = whole_chain(Rational(1) / printed("1.19"));
  CHECK(ladder.up(pounds(3)) == Mass::of(printed("3.57"), units::pound));
}

// Armed Forces Recipe Service, TM 10-412 (2003), cards L-5 and L-161: raw weight for 100 portions.
TEST_CASE("the whole chains of cards L-5 and L-161") {
  const Ladder round = whole_chain(fraction(9, 2) * 100 / 16 / 40);
  CHECK(as_decimal(round.yield() * 100, 2) == "70.31");
  CHECK(weight_to_buy(round, 100, ounces(fraction(9, 2))).purchased == pounds(40));
  CHECK(portions_from(round, pounds(40), ounces(fraction(9, 2))).portions == 100);

  const Ladder turkey = whole_chain(fraction(25, 65));
  CHECK(as_decimal(turkey.yield() * 100, 2) == "38.46");
  const PortionsServed served = portions_from(turkey, pounds(65), ounces(4));
  CHECK(served.portions == 100);
  CHECK(served.left_over == Mass{});
  CHECK(portion_for(turkey, pounds(65), 100) == ounces(4));
}

// Trade Calculations class sheet (2012).
TEST_CASE("35 portions of 185 g at a yield of 75 %") {
  const WeightToBuy need = weight_to_buy(whole_chain(fraction(3, 4)), 35, grams(185));
  CHECK(need.served == grams(6475));
  CHECK(as_decimal(need.purchased.in(units::kilogram), 2) == "8.63");
  CHECK(need.purchased.in(units::kilogram) == fraction(259, 30));
}

// USDA Food Buying Guide, appendix B: prints 3.28 lb, and 3.5 lb to buy.
TEST_CASE("two pounds of usable watermelon at a yield of .61") {
  const Rational exact = whole_chain(printed("0.61")).up(pounds(2)).in(units::pound);
  CHECK(exact == fraction(200, 61));
  CHECK(as_decimal(exact, 2) == "3.28");
  CHECK(up_to(exact, fraction(1, 2)) == fraction(7, 2));
}

// Kitchiner's loss trials (1817) print 26 1/2, 32 and 30 %; the first two are rounded.
TEST_CASE("beef boiled, roasted and baked by Kitchiner") {
  CHECK(loss(pounds(280), pounds(280) - pounds(73, 14)) == "26.38");
  CHECK(loss(pounds(190), pounds(190) - pounds(61, 2)) == "32.17");
  CHECK(loss(pounds(90), pounds(63)) == "30.00");
}

// Lowe, Experimental Cookery. The book prints 21.7, 28.0 and 26.3 %: the means over the roasts,
// which are not the ratios of the totals.
TEST_CASE("roasts of the trials in Experimental Cookery, from their totals") {
  CHECK(loss(pounds(60, 9), pounds(47, 10)) == "21.36");
  CHECK(loss(pounds(26, 11), pounds(18, 13)) == "29.51");
  CHECK(loss(pounds(74, 5), pounds(56, 3)) == "24.39");
}

// A purveyor's note (2012): prints 5.88 lb, 9.90 a pound, and 1.88 lb. What is lost in the bag
// before trimming is a rung of its own.
TEST_CASE("a purge of 2 % before 32 % is usable") {
  const Ladder ladder(
      {{Stage::purchased, Stage::thawed, fraction(98, 100), {Loss::purge}, "", {}, {}, false},
       {Stage::thawed, Stage::trimmed, fraction(32, 100), {Loss::trim}, "", {}, {}, false}});
  const auto steps = ladder.walk(pounds(6));
  CHECK(steps[1].mass.in(units::pound) == printed("5.88"));
  CHECK(steps[2].mass.in(units::pound) == printed("1.8816"));
  const Money invoice = per_pound("9.70") * pounds(6);
  CHECK(as_decimal(for_a_pound(invoice / steps[1].mass), 2) == "9.90");
}
