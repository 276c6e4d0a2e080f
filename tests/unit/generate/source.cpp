// SPDX-License-Identifier: MIT
// Rows of the tables as C++ text.

#include "generate/source.hpp"

#include "support/catch.hpp"
#include "support/folder.hpp"
#include "support/problem_of.hpp"

using namespace platewright;
using namespace platewright::generate;
using platewright::test::problem_of;

TEST_CASE("text becomes a literal") {
  CHECK(literal("a \"b\" \\ c\nd") == "\"a \\\"b\\\" \\\\ c\\nd\"");
}

TEST_CASE("lists are joined by a bar, which no name may hold") {
  CHECK(joined({"cup", "cups"}) == "\"cup|cups\"");
  CHECK(joined({}) == "\"\"");
  CHECK(problem_of([] { joined({"a|b"}); }).id == "row-bar");
}

TEST_CASE("figures that fit into a table, and one that does not") {
  CHECK(ratio(fraction(45359237, 100000)) == "{45359237, 100000}");
  CHECK(ratio(fraction(1, 9000000000000000000)) == "{1, 9000000000000000000}");
  CHECK(problem_of([] { ratio(fraction(1, 9000000000000000000) / 3); }).id == "row-too-fine");
}

TEST_CASE("a row has a figure for each of what it is printed for") {
  CHECK_NOTHROW(check_count("a hold", 12, "fat", 12));
  CHECK(problem_of([] { check_count("a hold", 11, "fat", 12); }).id == "row-count");
}

TEST_CASE("names become C++ names") {
  CHECK(identifier("US fluid ounce") == "us_fluid_ounce");
  CHECK(identifier("baker's dozen") == "baker_s_dozen");
  CHECK(identifier("No. 6 scoop") == "no_6_scoop");
}

TEST_CASE("a file is written only where its text changes") {
  const test::TemporaryFolder folder;
  const auto file = folder.path() / "a" / "b.cpp";
  write_if_changed(file.string(), "one\n");
  const auto first = std::filesystem::last_write_time(file);
  write_if_changed(file.string(), "one\n");
  CHECK(std::filesystem::last_write_time(file) == first);
  write_if_changed(file.string(), "two\n");
  CHECK(test::read_file(file) == "two\n");
}
