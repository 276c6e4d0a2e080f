// SPDX-License-Identifier: MIT
#include "platewright/recipe/step_notices.hpp"

#include "platewright/recipe/step_words.hpp"
#include "support/catch.hpp"
#include "support/kitchen.hpp"
#include "support/step_rows.hpp"

using namespace platewright;
using namespace platewright::test;

namespace {

MethodStep step_of(StepKind kind, const char* takes = nullptr) {
  MethodStep out;
  out.control = StepControl{kind};
  if (takes != nullptr) out.takes = TimeSpan{time_of(takes), time_of(takes)};
  return out;
}

std::vector<StepNotice> notices_of(MethodStep step) {
  Recipe recipe = recipe_for("a dish", 4, {line("turkey", "12 lb")});
  recipe.tested = TestedPieces{1, "bird", pounds(12)};
  recipe.steps = {std::move(step)};
  return step_notices(recipe, no_book, step_rows());
}

MethodStep reaching(StepKind kind, std::vector<ReachedTemperature> marks) {
  MethodStep out = step_of(kind);
  out.control->reaches = std::move(marks);
  return out;
}

ReachedTemperature mark(int degrees, const char* in) {
  return {Temperature::fahrenheit(degrees), time_of(in)};
}

}  // namespace

TEST_CASE("a step without a kind has no notice, whatever its words") {
  MethodStep step;
  step.text = "Thaw on the counter.";
  step.takes = TimeSpan{time_of("20 h"), time_of("20 h")};
  CHECK(notices_of(step).empty());
}

TEST_CASE("food is not thawed at a place that the table refuses, or of which it says nothing") {
  MethodStep step = step_of(StepKind::thaw, "3 days");
  step.control->where = StepPlace::refrigerator;
  CHECK(notices_of(step).empty());
  for (const StepPlace place : {StepPlace::counter, StepPlace::hot_box, StepPlace::ice_water}) {
    step.control->where = place;
    const auto found = notices_of(step);
    REQUIRE(found.size() == 1);
    CHECK(found[0].fault == StepFault::place);
    CHECK(found[0].number == 1);
    CHECK(found[0].rule.row == "3-501.13");
  }
}

TEST_CASE("what stands warmer or colder than its rule is named, and what stands at it is not") {
  MethodStep hot = step_of(StepKind::hold_hot, "3 h");
  CHECK(notices_of(hot).empty());
  hot.control->at = Temperature::fahrenheit(135);
  CHECK(notices_of(hot).empty());
  hot.control->at = Temperature::fahrenheit(110);
  CHECK(notices_of(hot).at(0).fault == StepFault::temperature);
  MethodStep cold = step_of(StepKind::marinate, "12 h");
  cold.control->at = Temperature::fahrenheit(41);
  CHECK(notices_of(cold).empty());
  cold.control->at = Temperature::fahrenheit(fraction(411, 10));
  CHECK(notices_of(cold).at(0).fault == StepFault::temperature);
}

TEST_CASE("food is cooled in two stages, each in its time") {
  // FDA Food Code 2022, 3-501.14(A): 70 F within 2 h, 41 F within 6 h in all
  CHECK(notices_of(reaching(StepKind::chill, {mark(70, "2 h"), mark(41, "6 h")})).empty());
  CHECK(notices_of(reaching(StepKind::chill, {mark(60, "1 h"), mark(38, "5 h")})).empty());
  const auto late = notices_of(reaching(StepKind::chill, {mark(70, "3 h"), mark(41, "6 h")}));
  REQUIRE(late.size() == 1);
  CHECK(late[0].fault == StepFault::time);
  CHECK(late[0].time == time_of("3 h"));
  const auto slow = notices_of(reaching(StepKind::chill, {mark(70, "2 h"), mark(41, "7 h")}));
  REQUIRE(slow.size() == 1);
  CHECK(slow[0].rule.temperature->at == Temperature::fahrenheit(41));
  const auto warm = notices_of(reaching(StepKind::chill, {mark(70, "2 h"), mark(50, "6 h")}));
  REQUIRE(warm.size() == 1);
  CHECK(warm[0].fault == StepFault::temperature);
  CHECK(warm[0].at == Temperature::fahrenheit(50));
  // On the way past 70 F: when it was there is not said
  CHECK(notices_of(reaching(StepKind::chill, {mark(41, "6 h")})).empty());
  CHECK(notices_of(reaching(StepKind::chill, {mark(38, "7 h")})).size() == 1);
  CHECK(notices_of(reaching(StepKind::chill, {mark(75, "2 h"), mark(41, "6 h")})).size() == 1);
  const auto again = notices_of(reaching(StepKind::chill, {mark(41, "1 h"), mark(50, "5 h")}));
  REQUIRE(again.size() == 1);
  CHECK(again[0].fault == StepFault::temperature);
  CHECK(again[0].at == Temperature::fahrenheit(50));
}

TEST_CASE("a cooling that names no temperature is over at its end") {
  CHECK(notices_of(step_of(StepKind::chill, "6 h")).empty());
  CHECK(notices_of(step_of(StepKind::chill)).empty());
  const auto found = notices_of(step_of(StepKind::chill, "10 h"));
  REQUIRE(found.size() == 1);
  CHECK(found[0].fault == StepFault::time);
  CHECK(found[0].time == time_of("10 h"));
  CHECK(found[0].rule.within == time_of("6 h"));
}

TEST_CASE("food is reheated to its temperature and in its time") {
  CHECK(notices_of(reaching(StepKind::reheat, {mark(165, "2 h")})).empty());
  CHECK(notices_of(reaching(StepKind::reheat, {mark(140, "1 h")})).at(0).fault ==
        StepFault::temperature);
  CHECK(notices_of(reaching(StepKind::reheat, {mark(165, "3 h")})).at(0).fault == StepFault::time);
  MethodStep untimed = reaching(StepKind::reheat, {{Temperature::fahrenheit(170), std::nullopt}});
  CHECK(notices_of(untimed).empty());
  untimed.takes = TimeSpan{time_of("1 h"), time_of("3 h")};
  CHECK(notices_of(untimed).at(0).fault == StepFault::time);
}

TEST_CASE("a piece thaws as long as its weight asks") {
  // USDA FSIS: 24 h for each 4 to 5 lb in a refrigerator, so 57.6 h to 72 h for 12 lb
  MethodStep step = step_of(StepKind::thaw, "58 h");
  step.control->where = StepPlace::refrigerator;
  CHECK(notices_of(step).empty());
  step.takes = TimeSpan{time_of("57 h"), time_of("80 h")};
  const auto found = notices_of(step);
  REQUIRE(found.size() == 1);
  CHECK(found[0].fault == StepFault::too_short);
  CHECK(found[0].thawing->time()->least == time_of("3456 min"));
  CHECK(found[0].thawing->time()->most == time_of("72 h"));
  // Not of the pieces: no weight is known
  step.uses = {"giblets"};
  CHECK(notices_of(step).empty());
}

TEST_CASE("heavier pieces thaw longer than the tested ones") {
  Recipe recipe = recipe_for("a dish", 4, {line("turkey", "12 lb")});
  recipe.tested = TestedPieces{1, "bird", pounds(12)};
  recipe.steps = {step_of(StepKind::thaw, "3 days")};
  recipe.steps[0].control->where = StepPlace::refrigerator;
  CHECK(step_notices(recipe, no_book, step_rows()).empty());
  CHECK(step_notices(recipe, no_book, step_rows(), pounds(20)).size() == 1);
  CHECK(step_notices(recipe, no_book, step_rows(), pounds(15)).empty());
}

TEST_CASE("a marinade is not used again before it is boiled") {
  TestKitchen kitchen;
  Ingredient pork = ingredient("pork");
  pork.safety = FoodKind("whole cut");
  kitchen.add(pork);
  kitchen.add(recipe_making("marinade", "1 qt", {}));
  Recipe recipe = recipe_for("a dish", 4, {line("pork", "2 lb"), line("marinade", "1 qt")});
  recipe.steps = {step_of(StepKind::marinate), step_of(StepKind::simmer), MethodStep()};
  recipe.steps[0].uses = {"pork", "marinade"};
  recipe.steps[2].uses = {"marinade"};
  const auto found = step_notices(recipe, kitchen.book, step_rows());
  REQUIRE(found.size() == 1);
  CHECK(found[0].fault == StepFault::marinade);
  CHECK(found[0].number == 3);
  CHECK(found[0].marinade == "marinade");
  recipe.steps[1].uses = {"marinade"};
  CHECK(step_notices(recipe, kitchen.book, step_rows()).empty());
}

TEST_CASE("another table has its own rules, and no other is left over") {
  SafetyTable table = step_rows();
  table.step_rules = {{StepKind::hold_hot,
                       std::nullopt,
                       StepDemand::stands_at,
                       BoundTemperature{Temperature::celsius(63), Bound::at_least},
                       {},
                       "another country",
                       "",
                       ""}};
  Recipe recipe = recipe_for("a dish", 4, {});
  recipe.steps = {step_of(StepKind::hold_hot), step_of(StepKind::chill, "10 h")};
  recipe.steps[0].control->at = Temperature::celsius(60);
  const auto found = step_notices(recipe, no_book, table);
  REQUIRE(found.size() == 1);
  CHECK(found[0].rule.source == "another country");
}
