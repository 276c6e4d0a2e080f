// SPDX-License-Identifier: MIT
#include "platewright/heat/core_curve.hpp"

#include "support/catch.hpp"
#include "support/problem_of.hpp"
#include "support/roast_terms.hpp"

using namespace platewright;
using namespace platewright::test;

namespace {

std::string problem_with(std::vector<CoreReading> readings) {
  return problem_of([&] { CoreCurve::of(readings); }).id;
}

}  // namespace

TEST_CASE("readings in order make a curve") {
  const CoreCurve curve = CoreCurve::of(
      {{minutes(0), fahrenheit(40)}, {minutes(10), fahrenheit(45)}, {minutes(11), fahrenheit(44)}});
  CHECK(curve.readings().size() == 3U);
}

TEST_CASE("too few readings, disorder, a gap") {
  CHECK(problem_with({}) == "core-log-short");
  CHECK(problem_with({{minutes(0), fahrenheit(40)}}) == "core-log-short");
  CHECK(problem_with({{minutes(5), fahrenheit(40)}, {minutes(5), fahrenheit(41)}}) ==
        "core-log-order");
  CHECK(problem_with({{minutes(5), fahrenheit(40)}, {minutes(4), fahrenheit(41)}}) ==
        "core-log-order");
  CHECK(problem_with({{minutes(0), fahrenheit(40)},
                      {minutes(10) + Duration::of(1, units::second), fahrenheit(41)}}) ==
        "core-log-gap");
}
