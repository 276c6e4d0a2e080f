// SPDX-License-Identifier: MIT
// Temperatures, and steps between them.

#include "platewright/number/write.hpp"
#include "platewright/quantity/read_temperature.hpp"
#include "support/catch.hpp"
#include "support/problem_of.hpp"

using namespace platewright;
using platewright::test::problem_of;

namespace {

std::string celsius(std::string_view text) {
  return as_exact(read_temperature(text).in_celsius());
}

}  // namespace

TEST_CASE("temperatures as they are written") {
  CHECK(celsius("32 F") == "0");
  CHECK(celsius("212F") == "100");
  CHECK(celsius("163 C") == "163");
  CHECK(celsius("163 \u00B0C") == "163");
  CHECK(celsius("50 degrees F") == "10");
  CHECK(celsius("50 deg. F") == "10");
  CHECK(celsius("37.5 Celsius") == "37.5");
  CHECK(celsius("130 F") == "490/9");
}

TEST_CASE("below zero") {
  CHECK(celsius("-18 C") == "-18");
  CHECK(celsius("-40 F") == "-40");
  CHECK(celsius("0 F") == "-160/9");
}

TEST_CASE("there and back is exact") {
  CHECK(read_temperature("135 F").in_fahrenheit() == 135);
  CHECK(Temperature::celsius(fraction(1, 3)).in_fahrenheit() == fraction(163, 5));
}

TEST_CASE("a temperature without a scale, or in another, is refused") {
  const auto id = [](std::string_view text) {
    return problem_of([&] { read_temperature(text); }).id;
  };
  CHECK(id("325") == "temperature-malformed");
  CHECK(id("325 K") == "temperature-malformed");
  CHECK(id("325 F inside") == "temperature-malformed");
  CHECK(id("hot") == "number-missing");
  CHECK(id("180,5 C") == "number-comma");
  CHECK(id("--5 C") == "number-signed");
}

// NIST SP 811, appendix B.8: a step of 1 F is 5/9 K.
TEST_CASE("the difference of two temperatures has no offset") {
  const TemperatureStep step = read_temperature("145 F") - read_temperature("130 F");
  CHECK(step.in(units::fahrenheit_step) == 15);
  CHECK(step.in(units::celsius_step) == fraction(25, 3));
  CHECK(read_temperature("130 F") + step == read_temperature("145 F"));
  CHECK(read_temperature("145 F") - step == read_temperature("130 F"));
}

TEST_CASE("temperatures compare across scales") {
  CHECK(read_temperature("212 F") == read_temperature("100 C"));
  CHECK(read_temperature("130 F") < read_temperature("55 C"));
}
