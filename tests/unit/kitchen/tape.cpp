// SPDX-License-Identifier: MIT
// Lengths as they are cut off.

#include "platewright/kitchen/tape.hpp"

#include "platewright/kitchen/measure_text.hpp"
#include "support/catch.hpp"
#include "support/kitchen.hpp"
#include "support/problem_of.hpp"

using namespace platewright;
using namespace platewright::test;

namespace {

std::string cut(const char* length, MeasuringSystem system) {
  return kitchen_parts_text(cut_off(to_length(amount(length)), tape_of(system, unit_table())));
}

}  // namespace

TEST_CASE("a length is cut up to the next step, never too short") {
  CHECK(cut("6 ft", MeasuringSystem::metric) == "1.9 m");    // 182.88 cm
  CHECK(cut("56 ft", MeasuringSystem::metric) == "17.5 m");  // 1706.88 cm
  CHECK(cut("3 in", MeasuringSystem::metric) == "8 cm");
  CHECK(cut("1 ft", MeasuringSystem::metric) == "31 cm");
  CHECK(cut("2 ft", MeasuringSystem::metric) == "65 cm");
  CHECK(cut("99 cm", MeasuringSystem::metric) == "1 m");
  CHECK(cut("24.8 ft", MeasuringSystem::us) == "25 ft");
  CHECK(cut("8.2 ft", MeasuringSystem::us) == "8 1/2 ft");
  CHECK(cut("2 m", MeasuringSystem::us) == "7 ft");
  CHECK(cut("30 cm", MeasuringSystem::imperial) == "12 in");
  CHECK(cut("2.1 in", MeasuringSystem::us) == "2 1/4 in");
}

TEST_CASE("a length that is a step already stays as it is") {
  CHECK(cut("1.5 m", MeasuringSystem::metric) == "1.5 m");
  CHECK(cut("24 ft", MeasuringSystem::us) == "24 ft");
  CHECK(cut("0 cm", MeasuringSystem::metric) == "0 cm");
}

TEST_CASE("a tape measures no weights") {
  const KitchenRule scale{{}, pounds_and_ounces(unit_table())};
  CHECK(problem_of([&] { cut_off(to_length(amount("1 ft")), scale); }).id == "wrong-dimension");
  CHECK(problem_of([] { to_length(amount("1 lb")); }).id == "wrong-dimension");
}
