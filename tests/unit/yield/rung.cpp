// SPDX-License-Identifier: MIT
#include "platewright/yield/rung.hpp"

#include "support/catch.hpp"
#include "support/problem_of.hpp"

using namespace platewright;
using platewright::test::problem_of;

namespace {
Rung roasted(const Rational& yield) {
  return {Stage::trimmed, Stage::cooked, yield, {Loss::cooking}, "roasted", {}, {}, false};
}
}  // namespace

TEST_CASE("a yield of 0 or less is refused") {
  CHECK(problem_of([] { check_rung(roasted(0)); }).id == "yield-not-positive");
  CHECK(problem_of([] { check_rung(roasted(-1)); }).found == "a yield of -1");
  CHECK(problem_of([] { check_rung(roasted(fraction(1, 1000))); }).id.empty());
}

TEST_CASE("a rung goes down the ladder") {
  Rung rung = roasted(fraction(3, 4));
  rung.to = Stage::thawed;
  const Problem problem = problem_of([&] { check_rung(rung); });
  CHECK(problem.id == "stages-out-of-order");
  CHECK(problem.found == "trimmed to thawed");
  rung.to = rung.from;
  CHECK(problem_of([&] { check_rung(rung); }).id == "stages-out-of-order");
}

TEST_CASE("a rung names a loss once") {
  Rung rung = roasted(fraction(3, 4));
  rung.holds = {Loss::bone, Loss::cooking, Loss::bone};
  const Problem problem = problem_of([&] { check_rung(rung); });
  CHECK(problem.id == "loss-held-twice");
  CHECK(problem.found.find("bone") == 0);
}

TEST_CASE("meat gains no weight without a reason") {
  Rung rung = roasted(fraction(11, 10));
  const Problem problem = problem_of([&] { check_meat_yield(rung); });
  CHECK(problem.id == "meat-yield-above-one");
  CHECK(problem.found == "a yield of 1.1 for meat");
  rung.holds.push_back(Loss::water_taken_up);
  CHECK(problem_of([&] { check_meat_yield(rung); }).id.empty());
  CHECK(problem_of([] { check_meat_yield(roasted(1)); }).id.empty());
}

TEST_CASE("a standard deviation needs two samples") {
  const Rational deviation = fraction(3, 100);
  CHECK(problem_of([&] { check_spread({{}, deviation, {}, {}}); }).id == "spread-without-samples");
  CHECK(problem_of([&] { check_spread({1, deviation, {}, {}}); }).id == "spread-without-samples");
  CHECK(problem_of([&] { check_spread({2, deviation, {}, {}}); }).id.empty());
  CHECK(problem_of([&] { check_spread({2, -deviation, {}, {}}); }).id == "number-not-positive");
}

TEST_CASE("a range may come without samples but not upside down") {
  const Rational low = fraction(53, 100);
  const Rational high = fraction(88, 100);
  CHECK(problem_of([&] { check_spread({{}, {}, low, high}); }).id.empty());
  CHECK(problem_of([&] { check_spread({{}, {}, low, {}}); }).id.empty());
  CHECK(problem_of([&] { check_spread({{}, {}, {}, high}); }).id.empty());
  const Problem problem = problem_of([&] { check_spread({{}, {}, high, low}); });
  CHECK(problem.id == "spread-upside-down");
  CHECK(problem.found == "a range from 0.88 to 0.53");
  CHECK(problem_of([&] { check_spread({{}, {}, Rational(0), high}); }).id == "spread-upside-down");
}
