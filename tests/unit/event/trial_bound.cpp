// SPDX-License-Identifier: MIT
// Bounds on questions that plan an event again and again.

#include "platewright/event/trial_bound.hpp"

#include "platewright/event/margin_risk.hpp"
#include "support/catch.hpp"
#include "support/kitchen.hpp"
#include "support/problem_of.hpp"

using namespace platewright;
using namespace platewright::test;

TEST_CASE("the larger the event the fewer plans, but some of any") {
  CHECK(most_trials(50) == 10000);
  CHECK(most_trials(5000) == 100);
  CHECK(most_trials(10'000'000) == 4);
  CHECK(problem_of([] { check_trials("a question", 100, 5000); }).id.empty());
  const Problem problem = problem_of([] { check_trials("a question", 101, 5000); });
  CHECK(problem.id == "too-many-trials");
  CHECK(problem.found == "a question of an event of 5000 lines, which takes 101 plans");
}

TEST_CASE("numbers are not drawn without end") {
  const Quote quote = make_quote(money("600"), {{"guests", 10, 1}}, QuoteTerms(), Currency("USD"));
  const std::vector<UncertainCost> costs(51, {"salt", money("1"), fraction(1, 10), 0});
  CHECK(problem_of([&] {
          margin_risk(quote, costs, {fraction(1, 10), 1, 1000000});
        }).id == "too-many-draws");
}

TEST_CASE("what is made in one plan has an end") {
  TestKitchen kitchen;
  Recipe recipe = recipe_for("soup", 10, {});
  for (int i = 0; i < 5000; ++i) recipe.lines.push_back(line("salt", "1 oz"));
  kitchen.add(ingredient("salt"));
  kitchen.add(std::move(recipe));
  Event event;
  event.guests = {{"adults", 10, 1, 1}};
  event.menu.assign(11, {"soup", 1, {}});
  CHECK(problem_of([&] { plan_production(event, kitchen.book, kitchen.prices); }).id ==
        "plan-too-large");
}
