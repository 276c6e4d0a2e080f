// SPDX-License-Identifier: MIT
#include <locale>
#include <sstream>

#include "platewright/number/read.hpp"
#include "platewright/number/write.hpp"
#include "support/catch.hpp"

using namespace platewright;

TEST_CASE("the tests run under a locale with a decimal comma", "[number][locale]") {
  std::ostringstream stream;
  stream << 1234.5;
  REQUIRE(stream.str() == "1.234,5");
}

TEST_CASE("the locale changes neither reading nor writing", "[number][locale]") {
  CHECK(read_number("1234.5") == fraction(12345, 10));
  CHECK(as_decimal(fraction(12345, 10), 2) == "1234.50");
  CHECK(as_exact(fraction(1234567, 1000)) == "1234.567");
  CHECK_THROWS_AS(read_number("1234,5"), Failure);
}
