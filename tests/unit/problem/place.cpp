// SPDX-License-Identifier: MIT
// Where a problem is.

#include "platewright/problem/catalogue/numbers.hpp"
#include "platewright/problem/failure.hpp"
#include "support/catch.hpp"

using namespace platewright;

TEST_CASE("a path grows step by step") {
  const Place recipe = inside(Place{"a.yaml", 1, 1, {}}, "recipe \"soup\"");
  CHECK(recipe.path == "recipe \"soup\"");
  CHECK(inside(recipe, "line 3").path == "recipe \"soup\" > line 3");
}

TEST_CASE("the place nearest to the cause wins") {
  const Problem placed = at(problems::number_missing("x"), Place{"a.yaml", 7, 2, "amount"});
  CHECK(at(placed, Place{"a.yaml", 1, 1, "recipe"}).place.line == 7);
}

TEST_CASE("a path without a line is kept behind the place that is found later") {
  Problem problem = problems::number_missing("x");
  problem.place.path = "amount";
  const Problem placed = at(problem, Place{"a.yaml", 4, 1, "line 2"});
  CHECK(placed.place.line == 4);
  CHECK(placed.place.path == "line 2 > amount");
}

TEST_CASE("a failure says what it is in one line") {
  const Failure failure(problems::number_not_positive("a yield", "0"));
  CHECK(failure.problem().id == "number-not-positive");
  CHECK(std::string(failure.what()) ==
        "number-not-positive: a yield of 0; expected a yield above 0");
}
