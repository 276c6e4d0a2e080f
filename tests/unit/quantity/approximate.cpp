// SPDX-License-Identifier: MIT
// From exact quantities to floating-point ones and back, each step by name.

#include "platewright/quantity/approximate.hpp"

#include <cmath>
#include <limits>
#include <type_traits>

#include "platewright/number/write.hpp"
#include "platewright/quantity/units.hpp"
#include "support/catch.hpp"
#include "support/problem_of.hpp"

using namespace platewright;
using platewright::test::problem_of;

namespace {
using ApproximateMass = Quantity<MassDimension, Approximate>;
}

// The figures are those of IEEE 754 binary64.
TEST_CASE("a double is turned into the fraction that it is") {
  CHECK(exact_value(0.5) == fraction(1, 2));
  CHECK(exact_value(-2.75) == fraction(-11, 4));
  CHECK(exact_value(0) == 0);
  CHECK(exact_value(1e22) == power_of_ten(22));
  CHECK(as_fraction(exact_value(0.1)) == "3602879701896397/36028797018963968");
  CHECK(nearest_double(exact_value(std::numeric_limits<double>::denorm_min())) ==
        std::numeric_limits<double>::denorm_min());
}

TEST_CASE("a fraction becomes the nearest double") {
  CHECK(nearest_double(fraction(1, 3)) == 1.0 / 3.0);
  CHECK(nearest_double(fraction(45359237, 100000)) == 453.59237);
  CHECK(nearest_double(fraction(1, 10)) == 0.1);
}

TEST_CASE("what is not finite is no fraction") {
  CHECK(problem_of([] { exact_value(std::numeric_limits<double>::infinity()); }).id ==
        "number-not-finite");
  CHECK(problem_of([] { exact_value(std::nan("")); }).id == "number-not-finite");
  CHECK(problem_of([] { exactly(ApproximateMass::of(1, units::gram) / 0.0); }).id ==
        "number-not-finite");
}

TEST_CASE("quantities cross where the caller says so") {
  const Mass leg = Mass::of(fraction(15, 2), units::pound);
  const ApproximateMass near = approximately(leg);
  CHECK(near.in(units::pound) == Approx(7.5).epsilon(1e-15));
  CHECK(to_step(near, 1, units::gram) == Mass::of(3402, units::gram));
  CHECK(to_step(near, 1, units::gram, Rounding::down) == Mass::of(3401, units::gram));
  CHECK(exactly(ApproximateMass::of(0.5, units::gram)) == Mass::of(fraction(1, 2), units::gram));
  // A tenth in binary is not a tenth, until it is rounded to one.
  const ApproximateMass tenth = ApproximateMass::of(0.1, units::gram);
  CHECK(exactly(tenth) != Mass::of(fraction(1, 10), units::gram));
  CHECK(to_step(tenth, fraction(1, 10), units::gram) == Mass::of(fraction(1, 10), units::gram));
}

TEST_CASE("approximate quantities follow the same rules of dimension") {
  const auto density = ApproximateMass::of(1.03, units::gram) /
                       Quantity<VolumeDimension, Approximate>::of(1, units::millilitre);
  const auto cup = Quantity<VolumeDimension, Approximate>::of(1, units::us_cup);
  CHECK(std::is_same_v<decltype(density * cup), ApproximateMass>);
  CHECK((density * cup).in(units::gram) == Approx(243.685937));
  CHECK(ApproximateMass::of(2, units::pound) / ApproximateMass::of(1, units::pound) == 2.0);
  CHECK_FALSE(std::is_convertible_v<Mass, ApproximateMass>);
  CHECK_FALSE(std::is_constructible_v<Mass, ApproximateMass>);
  CHECK_FALSE(std::is_constructible_v<Mass, double>);
}
