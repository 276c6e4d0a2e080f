// SPDX-License-Identifier: MIT
#include "platewright/safety/roast_oven.hpp"

#include "support/catch.hpp"
#include "support/safety_rows.hpp"

using namespace platewright;
using namespace platewright::test;

namespace {

RoastOvenCheck check(const std::vector<int>& settings, const std::optional<Mass>& weight) {
  std::vector<Temperature> temperatures;
  for (const int degrees : settings) temperatures.push_back(Temperature::fahrenheit(degrees));
  return check_roast_oven(temperatures, weight, safety_rows()).value();
}

Mass pounds(int count) {
  return Mass::of(count, units::pound);
}

}  // namespace

// FDA Food Code 2022, 3-401.11(B)(2): a still, dry oven at 350 F or more for a roast under 10 lb
// and at 250 F or more for one of 10 lb and more; a convection oven at 325 F and 250 F; a humid one
// at 250 F or less.

TEST_CASE("a small roast at 325 F meets the rule in a convection oven alone") {
  const RoastOvenCheck result = check({450, 325}, pounds(7));
  CHECK(result.under_ten_pounds);
  CHECK(result.still.temperature->at == Temperature::fahrenheit(350));
  CHECK(!result.still_meets);
  CHECK(result.convection_meets);
  CHECK(!result.humid_meets);
}

TEST_CASE("the lowest setting counts for a dry oven and the highest for a humid one") {
  CHECK(check({450, 350}, pounds(7)).still_meets);
  CHECK(!check({450, 349}, pounds(7)).still_meets);
  CHECK(!check({324, 450}, pounds(7)).convection_meets);
  CHECK(!check({251, 200}, pounds(7)).humid_meets);
  CHECK(check({250, 200}, pounds(7)).humid_meets);
}

TEST_CASE("from ten pounds on the limits are those of a large roast") {
  const RoastOvenCheck result = check({250}, pounds(10));
  CHECK(!result.under_ten_pounds);
  CHECK(result.still_meets);
  CHECK(result.convection_meets);
  CHECK(!check({249}, pounds(10)).still_meets);
  CHECK(!check({249}, pounds(10)).convection_meets);
}

TEST_CASE("a roast of unknown weight is held to the stricter limits") {
  CHECK(check({325}, std::nullopt).under_ten_pounds);
  CHECK(!check({325}, std::nullopt).still_meets);
}

TEST_CASE("without settings or without limits there is nothing to check") {
  CHECK(!check_roast_oven({}, pounds(7), safety_rows()));
  CHECK(!check_roast_oven({Temperature::fahrenheit(350)}, pounds(7), SafetyTable{}));
}
