// SPDX-License-Identifier: MIT
// How the times of steps grow.

#include "platewright/recipe/step_time.hpp"

#include "support/catch.hpp"
#include "support/kitchen.hpp"
#include "support/problem_of.hpp"

using namespace platewright;
using namespace platewright::test;

namespace {

/// Two legs at a time in one tub, 12 minutes.
Recipe two_legs() {
  Recipe out = recipe_for("legs", 20, {line("leg", "16 lb")});
  out.tested = TestedPieces{2, "leg", pounds(8)};
  out.largest_batch = 2;
  out.vessel = RecipeVessel{"tub", std::nullopt, Rational(3), ""};
  return out;
}

Duration time_for(const Rational& legs, std::optional<TimeGrowth> grows) {
  const Recipe recipe = two_legs();
  MethodStep step;
  step.takes = TimeSpan{time_of("12 min"), time_of("12 min")};
  step.grows = std::move(grows);
  return time_of(step, scale(recipe, plan_for_pieces(recipe, legs, no_book), no_book))->most;
}

}  // namespace

TEST_CASE("a time stays as tested where it does not say what it is for") {
  CHECK(time_for(2, {}) == time_of("12 min"));
  CHECK(time_for(10, {}) == time_of("12 min"));
  const Recipe recipe = two_legs();
  const ScaledRecipe scaled = scale(recipe, plan_for_pieces(recipe, 2, no_book), no_book);
  CHECK_FALSE(time_of(MethodStep(), scaled));
}

TEST_CASE("a time for each piece, batch, vessel or portion comes again for each") {
  CHECK(time_for(10, TimeGrowth{GrowsBy::piece}) == time_of("2 h"));
  CHECK(time_for(10, TimeGrowth{GrowsBy::batch}) == time_of("36 min"));
  CHECK(time_for(10, TimeGrowth{GrowsBy::vessel}) == time_of("48 min"));
  CHECK(time_for(1, TimeGrowth{GrowsBy::portion}) == time_of("2 h"));
}

TEST_CASE("of several at once the rest takes as long as a full number") {
  CHECK(time_for(8, TimeGrowth{GrowsBy::piece, 4}) == time_of("24 min"));
  CHECK(time_for(9, TimeGrowth{GrowsBy::piece, 4}) == time_of("36 min"));
}

TEST_CASE("people share the work") {
  CHECK(time_for(10, TimeGrowth{GrowsBy::piece, 1, 2}) == time_of("1 h"));
  CHECK(time_for(9, TimeGrowth{GrowsBy::piece, 4, 2}) == time_of("18 min"));
}

TEST_CASE("a time for what the recipe does not count is refused") {
  const Recipe soup = recipe_making("soup", "2 qt", {line("stock", "2 qt")});
  const ScaledRecipe scaled = scale(soup, plan_for_factor(soup, 2, no_book), no_book);
  const auto refused = [&](GrowsBy by) {
    MethodStep step;
    step.takes = TimeSpan{time_of("5 min"), time_of("5 min")};
    step.grows = TimeGrowth{by};
    return problem_of([&] { time_of(step, scaled); }).id;
  };
  CHECK(refused(GrowsBy::piece) == "recipe-no-pieces");
  CHECK(refused(GrowsBy::vessel) == "vessel-missing");
  CHECK(refused(GrowsBy::portion) == "recipe-no-portions");
}
