// SPDX-License-Identifier: MIT
#include "platewright/safety/pull_temperature.hpp"

#include "support/catch.hpp"
#include "support/safety_rows.hpp"

using namespace platewright;
using namespace platewright::test;

namespace {

PullCheck check(const char* key, int degrees, int rest_minutes = 20) {
  return check_pull_temperature(FoodKind(key), Temperature::fahrenheit(degrees),
                                Duration::of(rest_minutes, units::minute), safety_rows());
}

}  // namespace

TEST_CASE("a pull temperature is compared with every authority") {
  const PullCheck result = check("whole cut", 130);
  REQUIRE(result.checks.size() == 2);
  for (const MinimumCheck& one : result.checks) {
    CHECK(!one.reached);
    CHECK(one.short_by == TemperatureStep::of(15, units::fahrenheit_step));
    CHECK(one.rests_enough);
  }
}

TEST_CASE("a roast below the minimum needs the hold of the step table") {
  const PullCheck result = check("whole cut", 132);
  REQUIRE(result.hold.has_value());
  CHECK(result.hold->hold == Duration::of(89, units::minute));
  CHECK(result.advisory == Advisory::unless_held);
}

TEST_CASE("below the step table nothing makes up for the temperature") {
  const PullCheck result = check("whole cut", 125);
  CHECK(!result.hold);
  CHECK(result.advisory == Advisory::needed);
}

TEST_CASE("at the minimum no advisory is needed") {
  const PullCheck result = check("whole cut", 145, 2);
  CHECK(result.checks[0].reached);
  CHECK(result.checks[0].short_by == TemperatureStep{});
  CHECK(!result.checks[0].rests_enough);
  CHECK(result.checks[1].rests_enough);
  CHECK(result.advisory == Advisory::not_needed);
  CHECK(check("whole cut", 144).advisory == Advisory::unless_held);
}

TEST_CASE("the step table is for roasts alone") {
  const PullCheck result = check("poultry", 158);
  CHECK(!result.hold);
  CHECK(result.advisory == Advisory::cook_on);
  CHECK(check("poultry", 165).advisory == Advisory::not_needed);
}

TEST_CASE("the rule for food service decides before the one for consumers") {
  const PullCheck result = check("eggs", 150);
  CHECK(result.checks[0].reached);
  CHECK(!result.checks[1].reached);
  CHECK(result.advisory == Advisory::not_needed);
  // No rule for food service here: the consumer's one decides.
  CHECK(check("cured", 140).advisory == Advisory::unless_held);
}

TEST_CASE("no notice makes up for poultry or ground meat below the minimum") {
  // FDA Food Code 2022, 3-401.11(A)(3): 165 F; (A)(2): 155 F for 17 s
  const PullCheck bird = check("poultry", 150);
  CHECK(bird.advisory == Advisory::cook_on);
  REQUIRE(bird.cook_to.has_value());
  CHECK(bird.cook_to->at == Temperature::fahrenheit(165));
  CHECK(bird.cook_to->audience == Audience::food_service);
  const PullCheck ground = check("ground", 130);
  CHECK(ground.advisory == Advisory::cook_on);
  REQUIRE(ground.cook_to.has_value());
  CHECK(ground.cook_to->at == Temperature::fahrenheit(155));
  CHECK(ground.cook_to->hold == Duration::of(17, units::second));
  CHECK(check("ground", 155).advisory == Advisory::not_needed);
  CHECK(!check("ground", 155).cook_to);
  CHECK(check("stuffed", 150).advisory == Advisory::cook_on);
}

TEST_CASE("guests may choose eggs and rare whole cuts once they are told") {
  // FDA Food Code 2022, 3-401.11(D) and 3-603.11
  CHECK(check("eggs", 140).advisory == Advisory::needed);
  CHECK(check("whole cut", 120).advisory == Advisory::needed);
  CHECK(check("whole cut", 120).cook_to->at == Temperature::fahrenheit(145));
}

TEST_CASE("without a rest no authority's rest is kept") {
  const PullCheck result = check_pull_temperature(
      FoodKind("whole cut"), Temperature::fahrenheit(150), std::nullopt, safety_rows());
  CHECK(!result.checks[0].rests_enough);
}

TEST_CASE("food that the table asks nothing of is let through") {
  const PullCheck result = check("cake", 60);
  CHECK(result.checks.empty());
  CHECK(result.advisory == Advisory::no_minimum);
}

TEST_CASE("of several minimums that are missed the highest is the one to cook to") {
  // Two authorities for one kind, as a book of another country's beside its own may have them.
  SafetyTable table;
  const auto add = [&table](const char* authority, int degrees) {
    MinimumTemperature row = safety_rows().minimums.front();
    row.kind = FoodKind("whole cut");
    row.authority = authority;
    row.audience = Audience::food_service;
    row.at = Temperature::fahrenheit(degrees);
    table.minimums.push_back(row);
  };
  add("one", 145);
  add("another", 155);
  add("a third", 150);
  const auto to_cook_to = [&table](int pull) {
    return check_pull_temperature(FoodKind("whole cut"), Temperature::fahrenheit(pull), {}, table)
        .cook_to;
  };
  REQUIRE(to_cook_to(140));
  CHECK(to_cook_to(140)->authority == "another");
  REQUIRE(to_cook_to(152));
  CHECK(to_cook_to(152)->authority == "another");
  CHECK_FALSE(to_cook_to(155));
}
