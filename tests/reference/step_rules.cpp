// SPDX-License-Identifier: MIT
// The rules for steps against what the authorities print.

#include <map>

#include "platewright/book/book.hpp"
#include "platewright/recipe/step_notices.hpp"
#include "support/catch.hpp"

using namespace platewright;

namespace {

SafetyTable built_in() {
  return Book().tables.safety;
}

std::vector<StepRule> rules_of(StepKind kind, StepDemand demand) {
  std::vector<StepRule> out;
  for (const StepRule& rule : built_in().step_rules) {
    if (rule.step == kind && rule.demand == demand) out.push_back(rule);
  }
  return out;
}

Duration hours(int count) {
  return Duration::of(count, units::hour);
}

}  // namespace

TEST_CASE("the temperatures and times of the Food Code stand with the steps that they are for") {
  // FDA Food Code 2022, 3-501.14(A), 3-403.11(A) and (D), 3-501.16(A), 3-501.13, 3-501.17.
  const auto cooling = rules_of(StepKind::chill, StepDemand::reaches);
  REQUIRE(cooling.size() == 2);
  CHECK(cooling[0].temperature->at == Temperature::fahrenheit(70));
  CHECK(cooling[0].within == hours(2));
  CHECK(cooling[1].temperature->at == Temperature::fahrenheit(41));
  CHECK(cooling[1].within == hours(6));
  const auto heating = rules_of(StepKind::reheat, StepDemand::reaches);
  REQUIRE(heating.size() == 1);
  CHECK(heating[0].temperature->at == Temperature::fahrenheit(165));
  CHECK(heating[0].within == hours(2));
  const auto hot = rules_of(StepKind::hold_hot, StepDemand::stands_at);
  CHECK(hot.at(0).temperature->at == Temperature::fahrenheit(135));
  const auto cold = rules_of(StepKind::hold_cold, StepDemand::stands_at);
  CHECK(cold.at(0).temperature->at == Temperature::fahrenheit(41));
  CHECK(rules_of(StepKind::hold_cold, StepDemand::dated).at(0).within == hours(7 * 24));
  for (const StepRule& rule : rules_of(StepKind::thaw, StepDemand::stands_at)) {
    const bool water = rule.where == StepPlace::running_water;
    CHECK(rule.temperature->at == Temperature::fahrenheit(water ? 70 : 41));
    CHECK(rule.within.has_value() == water);
  }
  CHECK(rules_of(StepKind::thaw, StepDemand::never).at(0).where == StepPlace::counter);
}

TEST_CASE("every rule of a step has its source, and asks for what its demand needs") {
  for (const StepRule& rule : built_in().step_rules) {
    INFO(name_of(rule.step) << ", " << name_of(rule.demand));
    CHECK_FALSE(rule.source.empty());
    const bool told = rule.demand == StepDemand::told || rule.demand == StepDemand::never;
    CHECK((!told || !rule.note.empty()));
    const bool reached = rule.demand == StepDemand::stands_at || rule.demand == StepDemand::reaches;
    CHECK((!reached || rule.temperature.has_value()));
    const bool timed = rule.demand == StepDemand::lasts || rule.demand == StepDemand::waits ||
                       rule.demand == StepDemand::dated;
    CHECK((!timed || rule.within.has_value()));
  }
}

TEST_CASE("a turkey thaws as long as the chart of the FSIS says") {
  // USDA FSIS, thawing a turkey in a refrigerator: 4 to 12 lb 1 to 3 days, 12 to 16 lb 3 to 4, 16
  // to 20 lb 4 to 5, 20 to 24 lb 5 to 6.
  const SafetyTable table = built_in();
  REQUIRE(table.thawing_rates.size() == 2);
  const ThawingRate& rate = table.thawing_rates.front();
  CHECK(rate.where == StepPlace::refrigerator);
  for (const auto& [pounds, days] :
       std::map<int, int>{{4, 1}, {12, 3}, {16, 4}, {20, 5}, {24, 6}}) {
    INFO(pounds);
    CHECK(thawing_time(rate, Mass::of(pounds, units::pound)).most == hours(24 * days));
  }
  CHECK(thawing_time(rate, Mass::of(20, units::pound)).least == hours(24 * 4));
  // In cold water half an hour a pound
  CHECK(thawing_time(table.thawing_rates.back(), Mass::of(12, units::pound)).most == hours(6));
}
