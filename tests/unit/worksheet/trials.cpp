// SPDX-License-Identifier: MIT
#include "platewright/worksheet/trials.hpp"

#include "support/catch.hpp"
#include "support/problem_of.hpp"
#include "support/weights.hpp"

using namespace platewright;
using namespace platewright::test;

TEST_CASE("the mean of ratios is not the ratio of totals") {
  const TrialsResult result =
      work_out({{grams(1000), grams(600)}, {grams(3000), grams(2400)}, {grams(1000), grams(700)}});
  CHECK(result.trials == 3);
  CHECK(result.mean_of_ratios == fraction(7, 10));
  CHECK(result.ratio_of_totals == fraction(37, 50));
  CHECK(result.low == fraction(3, 5));
  CHECK(result.high == fraction(4, 5));
  // Deviations of -0.1, 0.1 and 0: variance 0.02 / 2.
  CHECK(*result.standard_deviation == fraction(1, 10));
  CHECK(result.spread() == Spread{3, fraction(1, 10), fraction(3, 5), fraction(4, 5)});
}

TEST_CASE("a single trial has no standard deviation") {
  const TrialsResult result = work_out({{grams(1000), grams(600)}});
  CHECK(result.mean_of_ratios == fraction(3, 5));
  CHECK_FALSE(result.standard_deviation.has_value());
}

TEST_CASE("a standard deviation that is not rational keeps its stated error") {
  const TrialsResult result = work_out({{grams(4), grams(1)}, {grams(4), grams(2)}});
  // Variance 1/32.
  const Rational square = *result.standard_deviation * *result.standard_deviation;
  CHECK(square <= fraction(1, 32));
  CHECK(fraction(1, 32) - square < fraction(1, 1'000'000'000'000'000'000));
}

TEST_CASE("a root is exact for whole squares and close for small fractions") {
  CHECK(square_root(0) == 0);
  CHECK(square_root(144) == 12);
  const Rational tiny = fraction(1, 1'000'000'000'000);
  const Rational square = square_root(tiny * 2) * square_root(tiny * 2);
  CHECK((tiny * 2 - square) / (tiny * 2) < fraction(1, 1'000'000'000'000'000'000));
}

TEST_CASE("trials of nothing are refused") {
  CHECK(problem_of([] { work_out(std::vector<Trial>{}); }).id == "trials-missing");
  CHECK(problem_of([] { work_out({Trial{grams(0), grams(1)}}); }).id == "number-not-positive");
  CHECK(problem_of([] { work_out({Trial{grams(1), grams(0)}}); }).id == "number-not-positive");
}
