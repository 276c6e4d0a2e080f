// SPDX-License-Identifier: MIT
// The cook's own timed roast at another weight.

#include "platewright/recipe/roasting_time.hpp"

#include "support/catch.hpp"
#include "support/kitchen.hpp"

using namespace platewright;
using namespace platewright::test;

namespace {

OvenStep at(int fahrenheit, const char* time) {
  return {Temperature::fahrenheit(fahrenheit), time_of(time), std::nullopt};
}

Recipe roast(std::vector<OvenStep> oven) {
  Recipe out = recipe_for("roast", 10, {line("leg", "8 lb")});
  out.tested = TestedPieces{1, "leg", pounds(8)};
  out.oven = std::move(oven);
  return out;
}

Recipe browned() {
  Recipe out = roast({at(450, "30 min"), at(325, "90 min")});
  out.oven[1].until = Temperature::fahrenheit(130);
  return out;
}

}  // namespace

TEST_CASE("ten roasts of the tested weight take one roast's time") {
  const Recipe recipe = browned();
  const auto steps = oven_plan(recipe, plan_for_pieces(recipe, 10, no_book));
  CHECK(steps[1].step.time == time_of("90 min"));
  CHECK_FALSE(steps[1].estimate);
}

// Eight times the weight is four times the thickness squared: 480 min, of which 30 are the
// browning.
TEST_CASE("the whole time follows weight^(2/3), and the browning stays") {
  const Recipe recipe = browned();
  const auto steps = oven_plan(recipe, plan_for_pieces(recipe, 1, no_book, pounds(64)));
  CHECK(steps[0].step.time == time_of("30 min"));
  CHECK_FALSE(steps[0].estimate);
  CHECK(steps[1].step.time == time_of("450 min"));
  CHECK(steps[1].estimate);
  CHECK(steps[0].step.oven == Temperature::fahrenheit(450));
  CHECK(steps[1].step.until == Temperature::fahrenheit(130));
}

TEST_CASE("small pieces that would be done in the browning are scaled in all steps") {
  const Recipe recipe = browned();
  const auto steps = oven_plan(recipe, plan_for_pieces(recipe, 1, no_book, pounds(1)));
  CHECK(steps[0].step.time == time_of("30 min") * fraction(1, 4));
  CHECK(steps[1].step.time == time_of("90 min") * fraction(1, 4));
  CHECK(steps[0].estimate);
}

TEST_CASE("a step without a time stays without one") {
  Recipe recipe = roast({at(450, "30 min"), at(325, "1 h")});
  recipe.oven[1].time.reset();
  recipe.oven[1].until = Temperature::fahrenheit(130);
  const auto steps = oven_plan(recipe, plan_for_pieces(recipe, 1, no_book, pounds(64)));
  CHECK(steps[0].step.time == time_of("2 h"));
  CHECK_FALSE(steps[1].step.time);
}
