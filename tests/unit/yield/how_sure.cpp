// SPDX-License-Identifier: MIT
#include "platewright/yield/how_sure.hpp"

#include "support/catch.hpp"
#include "support/problem_of.hpp"
#include "support/weights.hpp"

using namespace platewright;
using namespace platewright::test;

namespace {

/// A yield of 80 %; one roast in ten thousand samples has a standard deviation of 8 points.
Ladder roast(const std::optional<Rational>& deviation = fraction(8, 100)) {
  Spread spread;
  if (deviation) spread = {10'000, deviation, {}, {}};
  return Ladder({{Stage::purchased, Stage::served, fraction(4, 5), {}, "", spread, {}, false}});
}

WeightToBuy need() {
  return weight_to_buy(roast(), 40, grams(200));
}

bool near(const Rational& left, const Rational& right, const Rational& within) {
  return left - right < within && right - left < within;
}

}  // namespace

TEST_CASE("quantiles of the normal distribution are those of the printed tables") {
  // NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.1: 1.645, 1.960, 2.326 (three places).
  const Rational third_place = fraction(1, 2000);
  CHECK(near(detail::deviations_for(fraction(95, 100)), fraction(1645, 1000), third_place));
  CHECK(near(detail::deviations_for(fraction(975, 1000)), fraction(1960, 1000), third_place));
  CHECK(near(detail::deviations_for(fraction(99, 100)), fraction(2326, 1000), third_place));
  CHECK(detail::deviations_for(fraction(1, 2)) == 0);
}

TEST_CASE("half of the time the average is enough") {
  const SureWeight sure = sure_weight(roast(), need(), fraction(1, 2));
  REQUIRE(sure.can_tell());
  CHECK(*sure.purchased == need().purchased);
  CHECK(sure.average.purchased == grams(10'000));
}

TEST_CASE("to be surer takes more weight, by the margin of the yield") {
  // The relative deviation is 0.1, so that the margin is 0.1 x 1.644854 x sqrt(1 + 1 / 10000).
  const SureWeight sure = sure_weight(roast(), need(), fraction(95, 100));
  REQUIRE(sure.can_tell());
  CHECK(near(sure.purchased->in(units::gram), fraction(11'968'881, 1000), 1));
  const SureWeight surer = sure_weight(roast(), need(), fraction(99, 100));
  CHECK(*surer.purchased > *sure.purchased);
  const SureWeight ten = sure_weight(roast(), need(), fraction(95, 100), 10);
  CHECK(*ten.purchased < *sure.purchased);
  CHECK(*ten.purchased > need().purchased);
}

TEST_CASE("few samples make the average itself unsure") {
  Rung rung = roast().rungs().front();
  rung.spread.samples = 4;
  // At four roasts of the day and four samples the variance is 2 x 0.01 / 4.
  const SureWeight sure = sure_weight(Ladder({rung}), need(), fraction(95, 100), 4);
  const Rational margin = Rational(1) - need().purchased / *sure.purchased;
  const Rational deviations = detail::deviations_for(fraction(95, 100));
  CHECK(near(margin * margin, deviations * deviations * fraction(5, 1000), fraction(1, 1'000'000)));
}

TEST_CASE("where no spread is published it can't be told") {
  const SureWeight sure = sure_weight(roast(std::nullopt), need(), fraction(95, 100));
  CHECK_FALSE(sure.can_tell());
  CHECK(sure.unknown == std::vector<std::string>{"purchased to served"});
  const SurePieces pieces =
      sure_pieces(roast(std::nullopt), need(), {grams(2000), grams(100)}, fraction(95, 100));
  CHECK_FALSE(pieces.can_tell());
  CHECK(pieces.average.pieces == 5);
}

TEST_CASE("where nothing is lost the average is sure") {
  const Ladder ladder = Ladder::nothing_lost();
  const WeightToBuy wanted = weight_to_buy(ladder, 40, grams(200));
  CHECK(*sure_weight(ladder, wanted, fraction(99, 100)).purchased == wanted.purchased);
}

TEST_CASE("whole pieces cover the need at the probability and one fewer does not") {
  const SurePieces sure =
      sure_pieces(roast(), need(), {grams(2000), grams(200)}, fraction(95, 100));
  REQUIRE(sure.can_tell());
  CHECK(sure.average.pieces == 5);
  // k x 2000 x (1 - 1.645 x sqrt(0.02 / k)): 10 000 is passed by 6 pieces (10 860), not by 5.
  CHECK(sure.sure->pieces == 6);
  CHECK(sure_pieces(roast(), need(), {grams(2000), grams(200)}, fraction(1, 2)).sure->pieces == 5);
}

TEST_CASE("pieces of unlike weight take one more even where the yield is the same each time") {
  const Ladder even = roast(Rational(0));
  // 5 x 2000 x (1 - 1.645 x 0.1 / sqrt(5)) is below 10 000; with pieces all alike it is not.
  CHECK(sure_pieces(even, need(), {grams(2000), grams(200)}, fraction(95, 100)).sure->pieces == 6);
  CHECK(sure_pieces(even, need(), {grams(2000), grams(0)}, fraction(95, 100)).sure->pieces == 5);
}

TEST_CASE("many pieces are found without counting them up") {
  const WeightToBuy crowd = weight_to_buy(roast(), 1'000'000'000, grams(200));
  const SurePieces sure = sure_pieces(roast(), crowd, {grams(2000), grams(200)}, fraction(99, 100));
  REQUIRE(sure.can_tell());
  CHECK(sure.sure->pieces > sure.average.pieces);
  CHECK(sure.sure->pieces < sure.average.pieces * 2);
}

TEST_CASE("a probability or a spread out of range is a problem") {
  CHECK(problem_of([] { sure_weight(roast(), need(), fraction(49, 100)); }).id ==
        "share-out-of-range");
  CHECK(problem_of([] { sure_weight(roast(), need(), 1); }).id == "share-out-of-range");
  CHECK(problem_of([] { sure_weight(roast(), need(), fraction(9, 10), 0); }).id ==
        "number-not-positive");
  CHECK(problem_of([] { sure_weight(roast(Rational(1)), need(), fraction(9, 10)); }).id ==
        "spread-too-wide");
  CHECK(problem_of([] {
          sure_pieces(roast(), need(), {grams(100), grams(50)}, fraction(9, 10));
        }).id == "spread-too-wide");
}
