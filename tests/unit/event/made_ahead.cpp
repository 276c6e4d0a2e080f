// SPDX-License-Identifier: MIT
// When a sub-recipe is begun, how it is kept, and what waits.

#include "platewright/event/make_timeline.hpp"
#include "platewright/event/safety_warnings.hpp"
#include "support/catch.hpp"
#include "support/step_rows.hpp"
#include "support/supper.hpp"

using namespace platewright;
using namespace platewright::test;

namespace {

Instant moment_at(const char* text) {
  return ZonedTime(read_local_time(text)).instant();
}

MethodStep timed_step(const char* text, const char* takes) {
  return {text, {}, TimeSpan{time_of(takes), time_of(takes)}, false, {}};
}

MethodStep kind_of_step(StepKind kind, const char* takes) {
  MethodStep out = timed_step("", takes);
  out.control = StepControl{kind};
  return out;
}

/// Two dishes that use a stock: one in a step on the day before, the other an hour before serving.
struct StockKitchen {
  TestKitchen kitchen;
  Event event = supper();

  explicit StockKitchen(std::vector<MethodStep> of_stock) {
    kitchen.add(ingredient("bones"));
    Recipe stock = recipe_making("stock", "1 gal", {line("bones", "8 lb")});
    stock.steps = std::move(of_stock);
    kitchen.add(stock);
    add_user("early dish", {timed_step("Soak.", "24 h"), timed_step("Fry.", "1 h")}, 0);
    add_user("late dish", {timed_step("Soak.", "24 h"), timed_step("Boil.", "1 h")}, 1);
    event.menu = {{"early dish", 1, {}}, {"late dish", 1, {}}};
    event.guests = {{"guests", 10, 1, 1}};
  }

  void add_user(const char* name, std::vector<MethodStep> steps, std::size_t using_step) {
    Recipe recipe = recipe_for(name, 10, {line("stock", "1 qt")});
    steps[using_step].uses = {"stock"};
    recipe.steps = std::move(steps);
    kitchen.add(recipe);
  }

  Timeline timeline(const SafetyTable& table) const {
    return make_timeline(event, plan_production(event, kitchen.book, kitchen.prices), Order{},
                         table);
  }
};

SafetyTable dated_rows() {
  SafetyTable out = step_rows();
  out.step_rules.push_back({StepKind::hold_cold,
                            {},
                            StepDemand::dated,
                            {},
                            Duration::of(7, units::day),
                            "FDA Food Code 2022",
                            "3-501.17",
                            ""});
  return out;
}

const TimelineEntry& first_of(const Timeline& timeline, const char* recipe) {
  for (const TimelineEntry& entry : timeline.entries) {
    if (entry.recipe == recipe) return entry;
  }
  throw std::runtime_error("not in the timeline");
}

}  // namespace

TEST_CASE("a sub-recipe is ready when the step that uses it begins, not when the dish does") {
  StockKitchen late({timed_step("Simmer.", "4 h")});
  late.event.menu = {{"late dish", 1, {}}};
  // 18:30 less an hour of boiling, less four of simmering
  CHECK(first_of(late.timeline(step_rows()), "stock").latest == moment_at("2027-10-09 13:30"));
  StockKitchen early({timed_step("Simmer.", "4 h")});
  early.event.menu = {{"early dish", 1, {}}};
  // 18:30 less 25 h of the dish
  CHECK(first_of(early.timeline(step_rows()), "stock").latest == moment_at("2027-10-08 13:30"));
  const StockKitchen both({timed_step("Simmer.", "4 h")});
  CHECK(first_of(both.timeline(step_rows()), "stock").latest == moment_at("2027-10-08 13:30"));
}

TEST_CASE("where no step says that it uses a sub-recipe, it is ready before the dish is begun") {
  StockKitchen both({timed_step("Simmer.", "4 h")});
  both.event.menu = {{"late dish", 1, {}}};
  both.kitchen.book.recipes.change("late dish", [](Recipe& recipe) {
    for (MethodStep& step : recipe.steps) step.uses.clear();
  });
  CHECK(first_of(both.timeline(step_rows()), "stock").latest == moment_at("2027-10-08 13:30"));
}

TEST_CASE("cooked food that waits is named where no step says how it is kept") {
  const auto waiting = [](std::vector<MethodStep> steps) {
    return StockKitchen(std::move(steps)).timeline(step_rows()).waiting;
  };
  // From the soaking of the one to the boiling of the other: 24 h
  const auto found = waiting({kind_of_step(StepKind::simmer, "4 h")});
  REQUIRE(found.size() == 1);
  CHECK(found[0].recipe == "stock");
  CHECK(found[0].longest == time_of("24 h"));
  CHECK(waiting({timed_step("Simmer.", "4 h")}).empty());
  CHECK(waiting({kind_of_step(StepKind::simmer, "4 h"), kind_of_step(StepKind::chill, "6 h")})
            .empty());
}

TEST_CASE("food that is kept is used by the seventh day, the day it is made being the first") {
  // FDA Food Code 2022, 3-501.17
  const auto kept = [](const char* days) {
    MethodStep cold = kind_of_step(StepKind::hold_cold, days);
    cold.control->at = Temperature::fahrenheit(38);
    return StockKitchen(
               {kind_of_step(StepKind::simmer, "4 h"), kind_of_step(StepKind::chill, "6 h"), cold})
        .timeline(dated_rows())
        .kept;
  };
  const auto day = [](const char* text) { return read_local_day(text); };
  const auto short_time = kept("2 days");
  REQUIRE(short_time.size() == 1);
  CHECK(short_time[0].recipe == "stock");
  CHECK(short_time[0].cooled->kind == StepKind::chill);
  CHECK(short_time[0].kept.at == Temperature::fahrenheit(38));
  // Used on the 8th at 17:30 and on the 9th, chilled 54 h before the first of them
  CHECK(short_time[0].made == day("2027-10-06"));
  CHECK(short_time[0].used == day("2027-10-09"));
  CHECK(short_time[0].use_by == day("2027-10-12"));
  CHECK(short_time[0].in_time());
  CHECK(kept("5 days").at(0).in_time());
  CHECK_FALSE(kept("6 days").at(0).in_time());
}

TEST_CASE("a dish that is held hot behind the oven does not stand") {
  TestKitchen kitchen = supper_kitchen();
  Recipe lamb = kitchen.book.recipe("roast lamb");
  lamb.steps[1].oven = true;
  lamb.steps.push_back(timed_step("Carve.", "5 h"));
  const auto standing = [&] {
    kitchen.book.add(lamb);
    const Event event = supper();
    const Production production = plan_production(event, kitchen.book, kitchen.prices);
    return make_timeline(event, production, Order{}, step_rows()).standing;
  };
  CHECK(standing().size() == 1);
  lamb.steps.back().control = StepControl{StepKind::hold_hot};
  CHECK(standing().empty());
  lamb.steps.back().control->at = Temperature::fahrenheit(110);
  CHECK(standing().size() == 1);
}
