// SPDX-License-Identifier: MIT
#include "platewright/event/make_timeline.hpp"
#include "support/catch.hpp"
#include "support/problem_of.hpp"
#include "support/safety_rows.hpp"
#include "support/supper.hpp"

using namespace platewright;
using namespace platewright::test;

namespace {

Timeline whole_timeline(const Event& event, const TestKitchen& kitchen) {
  const Production production = plan_production(event, kitchen.book, kitchen.prices);
  return make_timeline(event, production,
                       make_order(event, production, kitchen.book, kitchen.prices), safety_rows());
}

/// What the kitchen does, and the last days to order.
Timeline timeline_for(const Event& event, const TestKitchen& kitchen) {
  Timeline out = whole_timeline(event, kitchen);
  std::erase_if(out.entries,
                [](const TimelineEntry& entry) { return entry.kind == TimelineKind::delivery; });
  return out;
}

Instant moment(const char* text) {
  return ZonedTime(read_local_time(text)).instant();
}

}  // namespace

TEST_CASE("a timeline goes backwards from the serving") {
  const Timeline timeline = timeline_for(supper(), supper_kitchen());
  CHECK(timeline.served == moment("2027-10-09 18:30"));
  REQUIRE(timeline.entries.size() == 7);
  const auto& entries = timeline.entries;
  CHECK(entries[0].kind == TimelineKind::order);
  CHECK(entries[0].supplier == "the butcher");
  CHECK(entries[0].latest == moment("2027-10-04 00:00"));
  CHECK(entries[6].kind == TimelineKind::serve);
  CHECK(entries[5].kind == TimelineKind::pull);
  CHECK(entries[5].latest == moment("2027-10-09 18:10"));
  CHECK(entries[5].earliest == entries[5].latest);
  CHECK(!entries[5].open);
  CHECK(entries[5].inside == Temperature::fahrenheit(130));
  CHECK(entries[5].takes->least == time_of("20 min"));
}

TEST_CASE("an order has the hour until which its supplier takes it") {
  TestKitchen kitchen = supper_kitchen();
  CHECK(!timeline_for(supper(), kitchen).entries[0].until);
  kitchen.prices.suppliers["the butcher"].cut_off = CutOff{2, std::chrono::hours(14)};
  const auto entries = timeline_for(supper(), kitchen).entries;
  CHECK(entries[0].kind == TimelineKind::order);
  CHECK(entries[0].until == std::chrono::hours(14));
}

TEST_CASE("deliveries stand on their last day, by supplier and day") {
  std::vector<TimelineEntry> deliveries = whole_timeline(supper(), supper_kitchen()).entries;
  std::erase_if(deliveries,
                [](const TimelineEntry& entry) { return entry.kind != TimelineKind::delivery; });
  REQUIRE(deliveries.size() == 4);
  CHECK(deliveries[0].supplier == "the butcher");
  CHECK(deliveries[0].latest == moment("2027-10-07 00:00"));
  CHECK(deliveries[0].goods == std::vector<std::string>{"lamb leg"});
  CHECK(deliveries[1].supplier == "the fishmonger");
  CHECK(deliveries[2].goods == std::vector<std::string>{"garlic", "olive oil", "parsley"});
  CHECK(deliveries[3].supplier == "the market");
  CHECK(deliveries[3].latest == moment("2027-10-08 00:00"));
  CHECK(deliveries[3].goods == std::vector<std::string>{"flour"});
}

TEST_CASE("a step of the oven without a time leaves the beginning open") {
  const auto entries = timeline_for(supper(), supper_kitchen()).entries;
  CHECK(entries[4].kind == TimelineKind::oven_step);
  CHECK(entries[4].oven->until == Temperature::fahrenheit(130));
  CHECK(entries[4].latest == moment("2027-10-09 18:10"));
  CHECK(!entries[4].earliest);
  CHECK(entries[4].open);
  CHECK(entries[3].oven->time == time_of("25 min"));
  CHECK(entries[3].latest == moment("2027-10-09 17:45"));
  CHECK(entries[3].open);
}

TEST_CASE("steps that take a span have a latest and an earliest beginning") {
  TestKitchen kitchen = supper_kitchen();
  kitchen.book.recipes.change("roast lamb",
                              [&](Recipe& recipe) { recipe.oven[1].time = time_of("95 min"); });
  const auto entries = timeline_for(supper(), kitchen).entries;
  // 18:30 less 20 min, 95 min, 25 min, and 12 h to 48 h
  CHECK(entries[2].kind == TimelineKind::method_step);
  CHECK(entries[2].recipe == "roast lamb");
  CHECK(entries[2].text == "Rub all over; cover; refrigerate.");
  CHECK(entries[2].latest == moment("2027-10-09 04:10"));
  CHECK(entries[2].earliest == moment("2027-10-07 16:10"));
  CHECK(!entries[2].open);
  // The sauce, 1 h to 2 h, is ready before the lamb is begun.
  CHECK(entries[1].recipe == "green sauce");
  CHECK(entries[1].latest == moment("2027-10-09 03:10"));
  CHECK(entries[1].earliest == moment("2027-10-07 14:10"));
}

TEST_CASE("a sub-recipe is ready for the first of all that use it") {
  TestKitchen kitchen = supper_kitchen();
  TimeSpan soak{time_of("30 min"), time_of("30 min")};
  kitchen.book.recipes.change("anchovy paste", [&](Recipe& recipe) {
    recipe.steps = {{"Pound.", {}, soak, false, {}}};
  });
  Event event = supper();
  event.menu = {{"flat bread", 1, {}}};
  const auto alone = timeline_for(event, kitchen).entries;
  REQUIRE(alone.size() == 2);
  CHECK(alone[0].latest == moment("2027-10-09 18:00"));
  const auto both = timeline_for(supper(), kitchen).entries;
  CHECK(both[1].recipe == "anchovy paste");
  // The lamb 17:45 less 12 h, the sauce an hour before that, the paste half an hour more
  CHECK(both[1].latest == moment("2027-10-09 04:15"));
  CHECK(both[1].open);
  CHECK(!both[1].earliest);
  kitchen.book.recipes.change("roast lamb", [&](Recipe& recipe) { recipe.oven.pop_back(); });
  // The lamb 17:45 less 48 h, the sauce two hours before that, the paste half an hour more
  const auto timed = timeline_for(supper(), kitchen).entries;
  CHECK(timed[1].recipe == "anchovy paste");
  CHECK(timed[1].earliest == moment("2027-10-07 15:15"));
  CHECK(!timed[1].open);
}

TEST_CASE("a rest without an oven counts, and seconds round to an earlier minute") {
  TestKitchen kitchen = supper_kitchen();
  Recipe bread = kitchen.book.recipe("flat bread");
  bread.rest = time_of("30 min");
  bread.steps = {{"Knead.", {}, TimeSpan{time_of("10 s"), time_of("90 s")}, false, {}}};
  kitchen.book.add(bread);
  Event event = supper();
  event.menu = {{"flat bread", 1, {}}};
  const auto entries = timeline_for(event, kitchen).entries;
  REQUIRE(entries.size() == 2);
  CHECK(entries[0].latest == moment("2027-10-09 17:59"));
  CHECK(entries[0].earliest == moment("2027-10-09 17:58"));
}

TEST_CASE("the oven comes at the step that is marked for it") {
  TestKitchen kitchen = supper_kitchen();
  Recipe lamb = kitchen.book.recipe("roast lamb");
  const TimeSpan quarter{time_of("15 min"), time_of("15 min")};
  lamb.oven.pop_back();
  // The time of the marked step is that of the oven: 25 min, not 15.
  lamb.steps[1].oven = true;
  lamb.steps[1].takes = quarter;
  lamb.steps.push_back({"Carve.", {}, quarter, false, {}});
  kitchen.book.add(lamb);
  const auto entries = timeline_for(supper(), kitchen).entries;
  REQUIRE(entries.size() == 7);
  CHECK(entries[5].text == "Carve.");
  CHECK(entries[5].latest == moment("2027-10-09 18:15"));
  CHECK(entries[4].kind == TimelineKind::pull);
  CHECK(entries[4].latest == moment("2027-10-09 17:55"));
  CHECK(entries[3].kind == TimelineKind::oven_step);
  CHECK(entries[3].latest == moment("2027-10-09 17:30"));
  CHECK(entries[2].latest == moment("2027-10-09 05:30"));
}

TEST_CASE("a dish that stands over four hours after the oven is named") {
  // FDA Food Code 2022, 3-501.19(B): 4 h at most
  TestKitchen kitchen = supper_kitchen();
  Recipe lamb = kitchen.book.recipe("roast lamb");
  CHECK(timeline_for(supper(), kitchen).standing.empty());
  lamb.rest = time_of("4 h");
  kitchen.book.add(lamb);
  CHECK(timeline_for(supper(), kitchen).standing.empty());
  lamb.steps[1].oven = true;
  lamb.steps.push_back({"Carve.", {}, TimeSpan{time_of("5 min"), time_of("10 min")}, false, {}});
  kitchen.book.add(lamb);
  const auto standing = timeline_for(supper(), kitchen).standing;
  REQUIRE(standing.size() == 1);
  CHECK(standing[0].recipe == "roast lamb");
  CHECK(standing[0].longest == time_of("250 min"));
  CHECK(standing[0].limit.row == "3-501.19(B)");
}

TEST_CASE("a timeline needs the time of serving") {
  Event event = supper();
  event.at.reset();
  event.place.line = 2;
  const Problem problem = problem_of([&] { timeline_for(event, supper_kitchen()); });
  CHECK(problem.id == "event-no-time");
  CHECK(problem.place.line == 2);
}

TEST_CASE("a step of more than a year is refused") {
  TestKitchen kitchen = supper_kitchen();
  kitchen.book.recipes.change("roast lamb",
                              [&](Recipe& recipe) { recipe.rest = time_of("367 days"); });
  CHECK(problem_of([&] { timeline_for(supper(), kitchen); }).id == "step-too-long");
}
