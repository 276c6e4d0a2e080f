// SPDX-License-Identifier: MIT
#include "platewright/yield/stage.hpp"

#include <string>

#include "platewright/yield/loss.hpp"
#include "support/catch.hpp"
#include "support/problem_of.hpp"

using namespace platewright;
using platewright::test::problem_of;

TEST_CASE("every stage is found by its own name") {
  for (const auto name : stage_names) CHECK(name_of(stage_from(name)) == name);
  CHECK(stage_from("purchased") == Stage::purchased);
  CHECK(stage_from("served") == Stage::served);
  CHECK(Stage::purchased < Stage::thawed);
  CHECK(Stage::carved < Stage::served);
}

TEST_CASE("a stage that is not known is answered with the nearest one") {
  const Problem problem = problem_of([] { stage_from("trimed"); });
  CHECK(problem.id == "stage-unknown");
  CHECK(problem.found == "\"trimed\"");
  CHECK(problem.remedy == "did you mean \"trimmed\"?");
  CHECK(problem_of([] { stage_from("Cooked"); }).remedy == "did you mean \"cooked\"?");
  CHECK(problem_of([] { stage_from("xyz"); }).remedy == "write one of these words");
}

TEST_CASE("every loss is found by its own name") {
  for (const auto name : loss_names) CHECK(name_of(loss_from(name)) == name);
  CHECK(loss_from("water taken up") == Loss::water_taken_up);
  const Problem problem = problem_of([] { loss_from("bones"); });
  CHECK(problem.id == "loss-unknown");
  CHECK(problem.remedy == "did you mean \"bone\"?");
}
