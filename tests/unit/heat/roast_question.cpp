// SPDX-License-Identifier: MIT
#include "platewright/heat/roast_question.hpp"

#include <numbers>

#include "support/catch.hpp"
#include "support/problem_of.hpp"
#include "support/roast_terms.hpp"

using namespace platewright;
using namespace platewright::test;

namespace {

std::string problem_with(const RoastTerms& terms) {
  return problem_of([&] { RoastQuestion::of(terms); }).id;
}

Length inches(int count) {
  return Length::of(count, units::inch);
}

}  // namespace

TEST_CASE("a shape is one that a piece of its weight can have") {
  // A ball of 5 lb has a girth of about 20 in.
  CHECK_NOTHROW(RoastShape::cylinder(pounds(5), inches(19)));
  CHECK(problem_of([] { RoastShape::cylinder(pounds(5), inches(24)); }).id == "roast-shape");
  CHECK(problem_of([] { RoastShape::cylinder(pounds(5), inches(0)); }).id == "roast-shape");
  CHECK(problem_of([] { RoastShape::slab(pounds(3), inches(9)); }).id == "roast-shape");
  CHECK(problem_of([] { RoastShape::sphere(pounds(0)); }).id == "number-not-positive");
}

TEST_CASE("heat crosses a body between its sides alone and all its surface") {
  // A cylinder of 1 kg of water, 10 cm thick: radius 5 cm, length 12.73 cm.
  const auto girth = Length::of(exact_value(10 * std::numbers::pi), units::centimetre);
  const HeatPaths paths = RoastShape::cylinder(Mass::of(1, units::kilogram), girth).paths(1000);
  CHECK(paths.without_ends.radius == Approx(0.05));
  CHECK(paths.without_ends.exponent == 1);
  CHECK(paths.with_ends.exponent == Approx(1 + 2 * 5 / 12.7324).epsilon(1e-5));
  CHECK(paths.likely().exponent == Approx(1 + 5 / 12.7324).epsilon(1e-5));
  const HeatPaths cube =
      RoastShape::slab(Mass::of(1, units::kilogram), Length::of(10, units::centimetre)).paths(1000);
  CHECK(cube.without_ends.exponent == 0);
  CHECK(cube.with_ends.exponent == Approx(2));
  const HeatPaths ball = RoastShape::sphere(Mass::of(1, units::kilogram)).paths(1000);
  CHECK(ball.with_ends.exponent == 2);
  CHECK(ball.likely().radius == Approx(0.0620350));
}

TEST_CASE("eight times the weight is twice as thick") {
  const RoastShape small = RoastShape::cylinder(pounds(2), inches(10));
  const RoastShape large = similar_shape(small, pounds(16));
  CHECK(large.weight() == pounds(16));
  CHECK(nearest_double(large.across().in(units::inch)) == Approx(20));
  CHECK(large.paths(1000).likely().exponent == Approx(small.paths(1000).likely().exponent));
  CHECK(similar_shape(RoastShape::sphere(pounds(1)), pounds(2)).weight() == pounds(2));
}

TEST_CASE("terms that can be worked out") {
  CHECK_NOTHROW(RoastQuestion::of(roast_terms(RoastShape::sphere(pounds(6)), 325, 130)));
}

TEST_CASE("terms that can't") {
  const RoastTerms good = roast_terms(RoastShape::sphere(pounds(6)), 325, 130);
  RoastTerms terms = good;
  terms.oven.clear();
  CHECK(problem_with(terms) == "roast-oven-steps");
  terms.oven = {{fahrenheit(450), {}}, {fahrenheit(325), {}}};
  CHECK(problem_with(terms) == "roast-oven-steps");
  terms.oven = {{fahrenheit(450), minutes(20)}};
  CHECK(problem_with(terms) == "roast-oven-steps");
  terms.oven = {{fahrenheit(450), minutes(0)}, {fahrenheit(325), {}}};
  CHECK(problem_with(terms) == "roast-oven-steps");
  terms = good;
  terms.start = fahrenheit(130);
  CHECK(problem_with(terms) == "roast-starts-done");
  terms = good;
  terms.pull = fahrenheit(220);
  CHECK(problem_with(terms) == "inside-temperature");
  terms = good;
  terms.oven = {{fahrenheit(130), {}}};
  CHECK(problem_with(terms) == "inside-above-oven");
}

TEST_CASE("meat is mostly water") {
  CHECK_NOTHROW(MeatComposition::of(fraction(3, 4), fraction(1, 5), fraction(1, 20)));
  const auto problem = [](const Rational& water, const Rational& protein, const Rational& fat) {
    return problem_of([&] { MeatComposition::of(water, protein, fat); }).id;
  };
  CHECK(problem(fraction(2, 5), fraction(1, 5), fraction(2, 5)) == "roast-composition");
  CHECK(problem(fraction(3, 4), fraction(1, 5), fraction(1, 10)) == "roast-composition");
  CHECK(problem(fraction(3, 4), fraction(-1, 5), fraction(1, 10)) == "roast-composition");
}
