// SPDX-License-Identifier: MIT
#include "platewright/day/plan_day.hpp"

#include "platewright/day/day_warnings.hpp"
#include "support/catch.hpp"
#include "support/problem_of.hpp"
#include "support/supper.hpp"

using namespace platewright;
using namespace platewright::test;

namespace {

Instant moment(const char* text) {
  return ZonedTime(read_local_time(text)).instant();
}

MethodStep step(const char* text, const char* least, const char* most,
                std::optional<StepKind> kind = {}) {
  MethodStep out{text, {}, TimeSpan{time_of(least), time_of(most)}, false, {}};
  if (kind) out.control = StepControl{*kind};
  return out;
}

MethodStep oven_step() {
  return {"Roast.", {}, std::nullopt, true, {}};
}

/// 20 portions of it are 2 roasts, one to a pan, 2 h at 325 F; it may wait up to an hour.
Recipe roast(const char* name) {
  Recipe out = recipe_for(name, 10, {line("lamb leg", "7.5 lb")});
  out.tested = TestedPieces{1, "leg", Mass::of(fraction(15, 2), units::pound)};
  out.vessel = RecipeVessel{"pan", std::nullopt, Rational(1), ""};
  out.oven = {{Temperature::fahrenheit(325), time_of("2 h"), std::nullopt}};
  out.steps = {step("Rub.", "20 min", "20 min"), oven_step(),
               step("Hold.", "0 min", "1 h", StepKind::hold_hot),
               step("Carve.", "20 min", "20 min", StepKind::carve)};
  return out;
}

struct Day {
  TestKitchen kitchen = supper_kitchen();
  Event event;
  Workplace workplace;

  Day() {
    event.name = "supper";
    event.at = read_local_time("2027-10-09 18:00");
    event.guests = {{"guests", 20}};
    workplace.ovens = {Oven{"deck", PanSpace{4, "pan", {}}}};
  }

  void add(Recipe recipe) {
    event.menu.push_back({recipe.name, 1, {}});
    kitchen.book.add(std::move(recipe));
  }

  DayPlan plan() const {
    return plan_day(event, plan_production(event, kitchen.book, kitchen.prices), workplace);
  }
};

const PlannedWork& work_of(const DayPlan& plan, const std::string& recipe, std::size_t number) {
  for (const PlannedWork& work : plan.works) {
    if (work.recipe == recipe && work.number == number) return work;
  }
  throw std::runtime_error("no such work");
}

Crew crew(const char* role, int workers) {
  return {role, workers, {}, {}};
}

}  // namespace

TEST_CASE("a day without people or spaces plans its ovens as late as they may be") {
  Day day;
  day.add(roast("lamb"));
  const DayPlan plan = day.plan();
  CHECK(fits(plan));
  REQUIRE(plan.loads.size() == 1);
  CHECK(plan.loads[0].in == moment("2027-10-09 15:40"));
  CHECK(plan.loads[0].out == moment("2027-10-09 17:40"));
  CHECK(plan.loads[0].pans == 2);
  CHECK(plan.loads[0].pan == "pan");
  CHECK(plan.not_said.empty());
  CHECK(work_of(plan, "lamb", 0).begin == moment("2027-10-09 15:20"));
  REQUIRE(plan.longest.size() == 1);
  CHECK(plan.longest[0].recipe == "lamb");
}

TEST_CASE("two dishes that do not fit at once share an oven one after another") {
  Day day;
  day.workplace.ovens[0].racks.holds = 2;
  day.add(roast("lamb"));
  Recipe short_roast = roast("pork");
  short_roast.oven[0].time = time_of("30 min");
  day.add(short_roast);
  const DayPlan plan = day.plan();
  CHECK(fits(plan));
  REQUIRE(plan.loads.size() == 2);
  CHECK(plan.loads[1].recipe == "pork");
  CHECK(plan.loads[1].in == moment("2027-10-09 17:10"));
  // The lamb is out when the pork goes in, and waits.
  CHECK(plan.loads[0].out == moment("2027-10-09 17:10"));
  CHECK(work_of(plan, "lamb", 4).begin == moment("2027-10-09 17:10"));
  CHECK(work_of(plan, "lamb", 5).begin == moment("2027-10-09 17:40"));
}

TEST_CASE("ovens that do not do are named, with what would do") {
  Day day;
  day.workplace.ovens[0].racks.holds = 2;
  day.add(roast("lamb"));
  day.add(roast("pork"));
  const DayPlan plan = day.plan();
  CHECK_FALSE(fits(plan));
  REQUIRE(plan.ovens_short.size() == 1);
  const OvensShort& one = plan.ovens_short.front();
  CHECK(one.recipes == std::vector<std::string>{"lamb", "pork"});
  CHECK(one.left_out == std::vector<std::string>{"pork"});
  CHECK(one.one_more_oven == "deck");
  CHECK(one.from == moment("2027-10-09 14:40"));
  CHECK(one.until == moment("2027-10-09 17:40"));
  REQUIRE(one.sooner.size() == 2);
  CHECK(one.sooner[0].time == std::chrono::minutes(60));
  // What it says would do does.
  Recipe held = roast("pork");
  held.steps[2].takes->most = time_of("2 h");
  Day later;
  later.workplace = day.workplace;
  later.add(roast("lamb"));
  later.add(held);
  CHECK(fits(later.plan()));
  Day more = day;
  more.workplace.ovens.push_back(Oven{"second", PanSpace{2, "pan", {}}});
  CHECK(fits(more.plan()));
}

TEST_CASE("an oven that does not reach a temperature is not used for it") {
  Day day;
  day.workplace.ovens[0].highest = Temperature::fahrenheit(300);
  day.add(roast("lamb"));
  REQUIRE(day.plan().not_said.size() == 1);
  CHECK(day.plan().not_said[0].what == NotSaid::too_hot);
  CHECK(day.plan().loads.empty());
  day.workplace.ovens.push_back(Oven{"hot", PanSpace{2, "pan", {}}});
  REQUIRE(day.plan().loads.size() == 1);
  CHECK(day.plan().loads[0].oven == 1);
}

TEST_CASE("what a plan needs and a recipe does not say is named") {
  const auto not_said = [](const Recipe& recipe, const Workplace& workplace) {
    Day day;
    day.workplace = workplace;
    day.add(recipe);
    std::vector<NotSaid> out;
    for (const DayNotSaid& one : day.plan().not_said) out.push_back(one.what);
    return out;
  };
  Workplace kitchen;
  kitchen.ovens = {Oven{"deck", PanSpace{4, "pan", {}}}};
  Recipe recipe = roast("lamb");
  recipe.vessel.reset();
  CHECK(not_said(recipe, kitchen) == std::vector<NotSaid>{NotSaid::pan});
  recipe = roast("lamb");
  recipe.vessel->name = "another pan";
  CHECK(not_said(recipe, kitchen) == std::vector<NotSaid>{NotSaid::pan_size});
  recipe = roast("lamb");
  recipe.oven[0].time.reset();
  CHECK(not_said(recipe, kitchen) == std::vector<NotSaid>{NotSaid::oven_time});
  recipe = roast("lamb");
  recipe.steps.resize(2);
  CHECK(not_said(recipe, kitchen) == std::vector<NotSaid>{NotSaid::dishing_up});
  kitchen.ovens[0].apart = Length::of(4, units::inch);
  CHECK(not_said(roast("lamb"), kitchen) == std::vector<NotSaid>{NotSaid::height});
}

TEST_CASE("a roast that stands higher than the racks are apart takes two of them") {
  Day day;
  day.workplace.ovens[0].apart = Length::of(4, units::inch);
  Recipe recipe = roast("lamb");
  recipe.stands = Length::of(7, units::inch);
  day.add(recipe);
  REQUIRE(day.plan().loads.size() == 1);
  CHECK(day.plan().loads[0].racks == 4);
  CHECK(day.plan().not_said.empty());
}

TEST_CASE("who is free does what is to be done, and no one does two things at once") {
  Day day;
  day.workplace.people = {crew("cook", 2)};
  day.add(roast("lamb"));
  day.add(roast("pork"));
  const DayPlan plan = day.plan();
  CHECK(fits(plan));
  const PlannedWork& lamb = work_of(plan, "lamb", 5);
  const PlannedWork& pork = work_of(plan, "pork", 5);
  REQUIRE(lamb.persons.size() == 1);
  REQUIRE(pork.persons.size() == 1);
  CHECK(lamb.persons != pork.persons);
}

TEST_CASE("where one pair of hands is short, what may wait is done sooner") {
  Day day;
  day.workplace.people = {crew("cook", 1)};
  day.add(roast("lamb"));
  Recipe other = roast("pork");
  other.steps.push_back(step("Keep.", "0 min", "30 min", StepKind::hold_hot));
  day.add(other);
  const DayPlan plan = day.plan();
  CHECK(fits(plan));
  CHECK(work_of(plan, "lamb", 5).begin == moment("2027-10-09 17:40"));
  CHECK(work_of(plan, "pork", 5).begin == moment("2027-10-09 17:20"));
  CHECK(work_of(plan, "pork", 6).begin == moment("2027-10-09 17:40"));
}

TEST_CASE("hands that are short are named with their step and hour") {
  Day day;
  day.workplace.people = {crew("cook", 1)};
  day.add(roast("lamb"));
  day.add(roast("pork"));
  const DayPlan plan = day.plan();
  REQUIRE(plan.hands_short.size() == 1);
  CHECK(plan.hands_short[0].step == 4);
  CHECK(plan.hands_short[0].begin == moment("2027-10-09 17:40"));
  CHECK(plan.hands_short[0].wanted == 1);
  CHECK(plan.hands_short[0].free == 0);
}

TEST_CASE("nobody works before they come or after they go") {
  Day day;
  day.workplace.people = {crew("cook", 1)};
  day.workplace.people[0].hours = {std::chrono::hours(17), std::chrono::hours(23)};
  day.add(roast("lamb"));
  const DayPlan plan = day.plan();
  REQUIRE(plan.hands_short.size() == 1);
  CHECK(plan.hands_short[0].step == 1);
  Recipe early = roast("lamb");
  early.steps[0] = step("Rub, refrigerate.", "1 h", "24 h", StepKind::dry_salt);
  early.steps[0].needs.hands = time_of("20 min");
  Day better;
  better.workplace = day.workplace;
  better.add(early);
  CHECK(fits(better.plan()));
  CHECK(work_of(better.plan(), "lamb", 0).begin == moment("2027-10-08 22:40"));
}

TEST_CASE("a role that a step names does it, and nobody else") {
  Day day;
  day.workplace.people = {crew("helper", 3), crew("head cook", 1)};
  Recipe recipe = roast("lamb");
  recipe.steps[3].needs.role = "head cook";
  day.add(recipe);
  const DayPlan plan = day.plan();
  CHECK(work_of(plan, "lamb", 5).persons == std::vector<std::size_t>{3});
  recipe.steps[3].needs.role = "butcher";
  Day other;
  other.workplace = day.workplace;
  other.add(recipe);
  REQUIRE(other.plan().hands_short.size() == 1);
  CHECK(other.plan().hands_short[0].role == "butcher");
}

TEST_CASE("hands make a step longer than it says, for every clock alike") {
  Day day;
  Recipe recipe = roast("lamb");
  recipe.steps[3].needs.hands = time_of("15 min");
  recipe.steps[3].needs.hands_for = TimeGrowth{GrowsBy::piece, 1, 1};
  day.add(recipe);
  const Production production = plan_production(day.event, day.kitchen.book, day.kitchen.prices);
  Timeline timeline = make_timeline(day.event, production, Order{});
  const auto carve =
      std::find_if(timeline.entries.begin(), timeline.entries.end(),
                   [](const TimelineEntry& entry) { return entry.text == "Carve."; });
  REQUIRE(carve != timeline.entries.end());
  CHECK(carve->latest == moment("2027-10-09 17:30"));
  set_planned(day.plan(), timeline);
  for (const TimelineEntry& entry : timeline.entries) {
    CHECK(entry.planned.has_value() == (entry.kind != TimelineKind::serve));
  }
}

TEST_CASE("a sub-recipe is planned for the minute at which it is used") {
  Day day;
  Recipe recipe = roast("lamb");
  recipe.lines.push_back(line("gravy", "1 cup"));
  recipe.steps[3].uses = {"gravy"};
  Recipe gravy = recipe_for("gravy", 10, {line("salt", "1 tsp")});
  gravy.makes.amount = amount("1 qt");
  gravy.steps = {step("Boil.", "30 min", "30 min", StepKind::simmer)};
  day.kitchen.book.add(gravy);
  day.add(recipe);
  day.workplace.hobs = 1;
  const DayPlan plan = day.plan();
  CHECK(work_of(plan, "gravy", 0).begin == moment("2027-10-09 17:10"));
  CHECK(plan.space_short.empty());
}

TEST_CASE("more pots than hobs are named with their hour") {
  Day day;
  day.workplace.hobs = 2;
  for (const char* name : {"soup", "sauce"}) {
    Recipe pot = recipe_for(name, 10, {line("salt", "1 tsp")});
    pot.steps = {step("Boil.", "30 min", "30 min", StepKind::simmer)};
    if (std::string(name) == "soup") pot.steps[0].needs.hobs = 2;
    day.add(pot);
  }
  const DayPlan plan = day.plan();
  REQUIRE(plan.space_short.size() == 1);
  CHECK(plan.space_short[0].space == Space::hobs);
  CHECK(plan.space_short[0].wanted == 3);
  CHECK(plan.space_short[0].there == 2);
  CHECK(plan.space_short[0].begin == moment("2027-10-09 17:30"));
  CHECK(plan.space_short[0].end == moment("2027-10-09 18:00"));
  CHECK(plan.space_short[0].recipes == std::vector<std::string>{"soup", "sauce"});
}

TEST_CASE("hot box and cold room hold the pans of the steps that stand in them") {
  Day day;
  Recipe recipe = roast("lamb");
  recipe.steps[0] = step("Rub, refrigerate.", "1 h", "1 h", StepKind::dry_salt);
  recipe.steps[0].control->where = StepPlace::refrigerator;
  recipe.steps[2].takes->least = time_of("30 min");
  day.add(recipe);
  day.workplace.hot_box = PanSpace{2, "pan", {}};
  day.workplace.cold_room = PanSpace{2, "pan", {}};
  CHECK(fits(day.plan()));
  day.workplace.hot_box->holds = 1;
  REQUIRE(day.plan().space_short.size() == 1);
  CHECK(day.plan().space_short[0].space == Space::hot_box);
  day.workplace.hot_box.reset();
  day.workplace.cold_room->holds = 1;
  REQUIRE(day.plan().space_short.size() == 1);
  CHECK(day.plan().space_short[0].space == Space::cold_room);
}

TEST_CASE("a day without an hour is refused") {
  Day day;
  day.add(roast("lamb"));
  day.event.at.reset();
  CHECK(problem_of([&] { day.plan(); }).id == "event-no-time");
}

TEST_CASE("what is short is a warning, and nothing else is") {
  Day day;
  day.add(roast("lamb"));
  const ProblemList none = day_warnings(day.plan(), {});
  CHECK(none.all().empty());
  day.workplace.people = {crew("cook", 1)};
  day.workplace.ovens[0].racks.holds = 1;
  day.add(roast("pork"));
  const DayPlan plan = day.plan();
  const ProblemList warnings = day_warnings(plan, {});
  REQUIRE(warnings.all().size() ==
          plan.ovens_short.size() + plan.hands_short.size() + plan.not_said.size());
  CHECK_FALSE(warnings.has_errors());
}
