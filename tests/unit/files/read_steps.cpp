// SPDX-License-Identifier: MIT
// Steps that say their kind.

#include "support/catch.hpp"
#include "support/small_book.hpp"

using namespace platewright;
using namespace platewright::test;

namespace {

std::string recipe_with(const std::string& steps) {
  return "recipe: a\nmakes: 4 portions\ningredients: [{lamb: 7.5 lb}]\nsteps:\n" + steps;
}

}  // namespace

TEST_CASE("a step says its kind, its place, its temperatures") {
  SmallBook files(Files{{"r.yaml", recipe_with("  - do: Cool.\n"
                                               "    kind: chill\n"
                                               "    where: walk-in\n"
                                               "    reaches: 70 F in 90 min, 5 C\n"
                                               "    takes: 4 h\n"
                                               "  - do: Keep.\n"
                                               "    kind: Hold Cold\n"
                                               "    at: 3 C\n"
                                               "  - Thaw on the counter.\n")},
                        {"larder.yaml", larder_text()}});
  const auto book = files.read({"r.yaml", "larder.yaml"});
  REQUIRE(book);
  const auto& steps = book->recipes.recipe("a").steps;
  REQUIRE(steps.size() == 3);
  const StepControl& chill = steps[0].control.value();
  CHECK(chill.kind == StepKind::chill);
  CHECK(chill.where == StepPlace::refrigerator);
  CHECK(!chill.at);
  REQUIRE(chill.reaches.size() == 2);
  CHECK(chill.reaches[0].at == Temperature::fahrenheit(70));
  CHECK(chill.reaches[0].in == Duration::of(90, units::minute));
  CHECK(chill.reaches[1].at == Temperature::celsius(5));
  CHECK(!chill.reaches[1].in);
  CHECK(steps[1].control->kind == StepKind::hold_cold);
  CHECK(steps[1].control->at == Temperature::celsius(3));
  CHECK(!steps[2].control);
}

TEST_CASE("every kind and every place is read by its own name") {
  for (const StepKind kind : all_step_kinds) CHECK(step_kind_from(name_of(kind)) == kind);
  for (const StepPlace place : all_step_places) CHECK(step_place_from(name_of(place)) == place);
  for (const StepDemand demand : all_step_demands) {
    CHECK(step_demand_from(name_of(demand)) == demand);
  }
}
