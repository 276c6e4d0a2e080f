// SPDX-License-Identifier: MIT
#include "platewright/safety/safety_table.hpp"

#include "support/catch.hpp"
#include "support/safety_rows.hpp"

using namespace platewright;
using namespace platewright::test;

TEST_CASE("each authority's minimum is found by the kind of food") {
  const auto rows = safety_rows().minimums_for(FoodKind("whole cut"));
  REQUIRE(rows.size() == 2);
  CHECK(rows[0].authority == "USDA FSIS");
  CHECK(rows[1].authority == "FDA Food Code 2022");
  CHECK(safety_rows().minimums_for(FoodKind("cake")).empty());
}

TEST_CASE("between two rows of the step table the lower temperature's longer time holds") {
  const SafetyTable table = safety_rows();
  const auto hold_at = [&](int degrees) {
    return table.roast_hold_at(Temperature::fahrenheit(degrees));
  };
  CHECK(hold_at(131)->hold == Duration::of(89, units::minute));
  CHECK(hold_at(132)->at == Temperature::fahrenheit(131));
  CHECK(hold_at(133)->hold == Duration::of(56, units::minute));
  CHECK(hold_at(200)->hold == Duration{});
  CHECK(!hold_at(129));
}

TEST_CASE("limits are found by key") {
  CHECK(safety_rows().limit("hot holding")->temperature->at == Temperature::fahrenheit(135));
  CHECK(!safety_rows().limit("hot holdings"));
}
