// SPDX-License-Identifier: MIT
// Exercises: one number gives one exercise, and every one can be worked.

#include "platewright/worksheet/exercise.hpp"

#include <set>

#include "support/catch.hpp"
#include "support/problem_of.hpp"
#include "support/tables.hpp"

using namespace platewright;
using namespace platewright::test;

// The first numbers of SplitMix64 for the seed 1234567, as the reference program of its authors
// prints them (from memory; worked out again from the published function).
TEST_CASE("the numbers of an exercise are those of the published function", "[reference]") {
  ExerciseNumbers numbers(1234567);
  CHECK(numbers.next() == 6457827717110365317ULL);
  CHECK(numbers.next() == 3203168211198807973ULL);
  CHECK(numbers.next() == 9817491932198370423ULL);
}

TEST_CASE("a number between two is one of them, and each comes") {
  ExerciseNumbers numbers(7);
  std::set<std::int64_t> seen;
  for (int i = 0; i < 200; ++i) seen.insert(numbers.between(-2, 2));
  CHECK(seen == std::set<std::int64_t>{-2, -1, 0, 1, 2});
  CHECK(numbers.between(5, 5) == 5);
}

TEST_CASE("every exercise can be worked, and is near its row of the table") {
  const YieldTable& table = the_tables().yields;
  std::set<std::string> rows;
  for (std::uint64_t number = 0; number < 200; ++number) {
    const WeighedIn weights = number % 3 == 0 ? WeighedIn::kilograms : WeighedIn::pounds;
    const Exercise exercise = draw_exercise(number, table, weights);
    const Worksheet solution = solution_of(exercise, table);
    rows.insert(exercise.row);
    INFO(name_of(exercise));
    for (const TrimLine& line : solution.trim->lines) CHECK(line.weight > Mass{});
    CHECK(solution.cooking->saleable > Mass{});
    REQUIRE(solution.handbook);
    REQUIRE(!solution.handbook->comparisons.empty());
    const HandbookComparison& oven = solution.handbook->comparisons.front();
    const Rational apart = oven.tested - oven.rung.yield;
    // Three points, and half a step of the weights at each end.
    CHECK(apart < fraction(6, 100));
    CHECK(apart > fraction(-6, 100));
  }
  CHECK(rows.size() > 20);
}

TEST_CASE("one number gives one exercise") {
  const YieldTable& table = the_tables().yields;
  const Worksheet one = solution_of(draw_exercise(41, table), table);
  const Worksheet again = solution_of(draw_exercise(41, table), table);
  const Worksheet other = solution_of(draw_exercise(42, table), table);
  CHECK(one.name == again.name);
  CHECK(one.trim->net_cost == again.trim->net_cost);
  CHECK(one.trim->net_cost != other.trim->net_cost);
}

TEST_CASE("tables without a cut to draw are told") {
  CHECK(problem_of([] { draw_exercise(1, YieldTable(YieldRows{})); }).id == "cut-to-draw-missing");
}

TEST_CASE("the shares of the weight as purchased are all of it, and the whole yield is the product",
          "[worksheet]") {
  const YieldTable& table = the_tables().yields;
  const Worksheet sheet = solution_of(draw_exercise(5, table), table);
  const auto value = [&](const char* step) {
    return std::get<Rational>(find_step(sheet.cooking_working, step)->value);
  };
  CHECK(value("trim, share as purchased") + value("cooking loss, share as purchased") +
            value("bones and trim, share as purchased") + value("whole yield") ==
        1);
  CHECK(value("whole yield") == sheet.trim->yield * sheet.cooking->saleable_share);
}
