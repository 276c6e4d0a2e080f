// SPDX-License-Identifier: MIT
// A recipe that is published and taken in again is the same recipe.

#include <rapidcheck.h>

#include "platewright/book/kitchen_for.hpp"
#include "platewright/card/published_recipe.hpp"
#include "platewright/files/take_in_recipe.hpp"
#include "support/catch.hpp"
#include "support/small_book.hpp"

using namespace platewright;
using namespace platewright::test;

namespace {

/// Names with commas of their own, of which one is the beginning of another.
const char* const names[] = {"salt",   "garlic", "garlic, peeled", "lamb leg, bone-in",
                             "barley", "oil"};

std::string published_larder() {
  std::string out = "currency: USD\nlarder:\n";
  for (const char* name : names) {
    out += "  \"" + std::string(name) + "\": {free: yes, allergens: none}\n";
  }
  return out;
}

std::string amount_drawn() {
  const int eighths = *rc::gen::inRange(1, 80);
  const std::string unit =
      *rc::gen::element<std::string>("tsp", "tbsp", "cups", "qt", "oz", "lb", "g", "kg", "ml");
  const auto written = [&](int of_eight) { return as_mixed(fraction(of_eight, 8)) + " " + unit; };
  switch (*rc::gen::inRange(0, 6)) {
    case 0:
      return "to taste";
    case 1:
      return written(eighths) + " to " + written(eighths + *rc::gen::inRange(8, 40));
    default:
      return written(eighths);
  }
}

/// A recipe in which each name stands once.
std::string recipe_drawn() {
  std::string out = "recipe: a dish\nwith: [larder.yaml]\nmakes: " +
                    as_exact(Rational(*rc::gen::inRange(1, 90))) + " portions of 6 oz\n" +
                    "ingredients:\n";
  for (const char* name : names) {
    const std::string preparation =
        *rc::gen::element<std::string>("", "chopped", "soaked, drained", "as fine as can be");
    out += "  - \"" + std::string(name) + "\": \"" + amount_drawn() +
           (preparation.empty() ? "" : ", " + preparation) + "\"\n";
    if (*rc::gen::inRange(0, 3) == 0) out += "    as: cooked\n";
  }
  return out + "steps:\n  - do: \"Mix: first \\\"this\\\", then that.\"\n";
}

/// Read back from what a kitchen measures: within its tolerance, or a scale's step.
void assert_near(const std::optional<Amount>& written, const std::optional<Amount>& taken) {
  RC_ASSERT(written.has_value() == taken.has_value());
  if (!written) return;
  const Rational before = written->canonical();
  const Rational after = taken->canonical();
  const Rational error = after > before ? after - before : before - after;
  const Rational step = written->dimension() == UnitDimension::mass ? 4 : fraction(3, 5);
  RC_ASSERT(error <= before / 50 + step);
}

}  // namespace

TEST_CASE("a recipe that is published and taken in again has the same lines and steps") {
  CHECK(rc::check([] {
    const std::string written = recipe_drawn();
    SmallBook files(Files{{"larder.yaml", published_larder()}, {"dish.yaml", written}});
    const auto book = files.read({"dish.yaml"});
    RC_ASSERT(book.has_value());
    const Recipe& before = book->recipes.recipes.begin()->second;
    const ScaledRecipe scaled =
        scale(before, plan_for_factor(before, 1, book->recipes), book->recipes);
    const std::string json = write_json_ld({published_recipe(scaled, *book)});
    test::write_file(files.path("dish.json"), json);

    ProblemList problems;
    const auto taken = take_in_recipe(files.path("dish.json"), *book, problems);
    RC_ASSERT(taken.has_value());
    RC_LOG() << json << taken->text;
    RC_ASSERT(problems.all().empty());
    RC_ASSERT(taken->unmatched == 0U);
    test::write_file(files.path("again.yaml"), taken->text + "with: [larder.yaml]\n");
    const auto again = files.read({"again.yaml"});
    RC_ASSERT(again.has_value());
    const Recipe& after = again->recipes.recipes.begin()->second;

    RC_ASSERT(after.name == before.name);
    RC_ASSERT(*after.makes.portions == *before.makes.portions);
    RC_ASSERT(after.lines.size() == before.lines.size());
    for (std::size_t i = 0; i < before.lines.size(); ++i) {
      RC_ASSERT(after.lines[i].name == before.lines[i].name);
      RC_ASSERT(after.lines[i].preparation == before.lines[i].preparation);
      const LineAmount& amount = *before.lines[i].amount.amount();
      const LineAmount& taken_in = *after.lines[i].amount.amount();
      assert_near(amount.low(), taken_in.low());
      // A range whose ends a kitchen measures alike is one measure.
      if (amount.high())
        assert_near(amount.high(), taken_in.high() ? taken_in.high() : taken_in.low());
      if (!amount.to_taste()) RC_ASSERT(after.lines[i].stage == before.lines[i].stage);
    }
    RC_ASSERT(after.steps.size() == before.steps.size());
    RC_ASSERT(after.steps.front().text == before.steps.front().text);
  }));
}
