// SPDX-License-Identifier: MIT
// Fractions whose exact value has no end.

#include "platewright/number/rational.hpp"
#include "support/catch.hpp"
#include "support/problem_of.hpp"

using namespace platewright;
using namespace platewright::test;

TEST_CASE("a fraction does not grow without end") {
  const auto squared = [](int times) {
    return problem_of([times] {
             Rational value = fraction(1'000'000'007, 998'244'353);
             for (int i = 0; i < times; ++i) value *= value;
           })
        .id;
  };
  // 30 binary digits, doubled each time.
  CHECK(squared(11).empty());
  CHECK(squared(12) == "number-too-fine");
}
