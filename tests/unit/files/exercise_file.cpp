// SPDX-License-Identifier: MIT
#include "platewright/files/exercise_file.hpp"

#include "platewright/files/read_worksheet.hpp"
#include "support/catch.hpp"
#include "support/folder.hpp"

using namespace platewright;
using namespace platewright::test;

namespace {

Worksheet read_back(const std::string& text) {
  const TemporaryFolder folder;
  const std::string file = (folder.path() / "exercise.yaml").string();
  write_file(file, text);
  ProblemList problems;
  auto sheet = read_worksheet(file, Book(), problems);
  CHECK(problems.all().empty());
  REQUIRE(sheet);
  return *std::move(sheet);
}

}  // namespace

TEST_CASE("an exercise's file reads as the exercise, with nothing to mark yet") {
  const Book book;
  const YieldTable& table = book.tables.yields;
  for (std::uint64_t number = 1; number <= 60; ++number) {
    const WeighedIn weights = number % 2 == 0 ? WeighedIn::kilograms : WeighedIn::pounds;
    const Exercise exercise = draw_exercise(number, table, weights);
    const Worksheet solution = solution_of(exercise, table);
    const std::string text = exercise_file(exercise, table);
    const Worksheet read = read_back(text);
    INFO(text);
    CHECK(read.name == solution.name);
    CHECK(read.weights == solution.weights);
    CHECK(read.trim_answers.empty());
    CHECK(read.cooking_answers.empty());
    REQUIRE(read.trim_working.size() == solution.trim_working.size());
    for (std::size_t i = 0; i < read.trim_working.size(); ++i) {
      CHECK(read.trim_working[i].value == solution.trim_working[i].value);
    }
    REQUIRE(read.cooking_working.size() == solution.cooking_working.size());
    for (std::size_t i = 0; i < read.cooking_working.size(); ++i) {
      CHECK(read.cooking_working[i].value == solution.cooking_working[i].value);
    }
  }
}

TEST_CASE("an answer that is filled in is marked, the others wait") {
  const Book book;
  std::string text = exercise_file(draw_exercise(1, book.tables.yields), book.tables.yields);
  const std::string blank = "\"whole yield\": ____";
  REQUIRE(text.find(blank) != std::string::npos);
  text.replace(text.find(blank), blank.size(), "\"whole yield\": 99 %");
  const Worksheet read = read_back(text);
  CHECK(read.trim_answers.empty());
  REQUIRE(read.cooking_answers.size() == 1);
  CHECK(read.cooking_answers.front().verdict == Verdict::wrong);
}
