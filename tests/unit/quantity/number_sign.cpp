// SPDX-License-Identifier: MIT
// `#`: a pound behind a number, part of a can's name before one.

#include "platewright/quantity/read_amount.hpp"
#include "support/catch.hpp"
#include "support/problem_of.hpp"
#include "support/tables.hpp"

using namespace platewright;
using platewright::test::problem_of;
using platewright::test::unit_table;

TEST_CASE("a number sign is a pound behind a number and the name of a can before one") {
  const auto read = [&](const char* text) {
    return amount_text(read_amount(text, unit_table(), MeasuringSystem::us));
  };
  CHECK(read("5#") == "5 lb");
  CHECK(read("2 1/2 #") == "2 1/2 lb");
  CHECK(read("2 #10 cans") == "2 No. 10 cans");
  CHECK(problem_of([&] { read("#5"); }).id == "number-missing");
}
