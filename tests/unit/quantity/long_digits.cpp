// SPDX-License-Identifier: MIT
// Ten megabytes of digits: one clear problem, without reading them all.

#include <chrono>
#include <string>

#include "platewright/number/read.hpp"
#include "platewright/quantity/read_amount.hpp"
#include "support/catch.hpp"
#include "support/problem_of.hpp"
#include "support/tables.hpp"

using namespace platewright;
using platewright::test::problem_of;
using platewright::test::unit_table;

TEST_CASE("ten megabytes of digits are refused at once") {
  const std::string digits = std::string().append(10'000'000, '7');
  const std::string fractions = [] {
    std::string out;
    while (out.size() < 10'000'000) out += "\u00BD";
    return out;
  }();
  const auto start = std::chrono::steady_clock::now();
  CHECK(problem_of([&] { read_number(digits); }).id == "number-too-long");
  CHECK(problem_of([&] { read_number("0." + digits); }).id == "number-too-long");
  CHECK(problem_of([&] { read_number("1/" + digits); }).id == "number-too-long");
  CHECK(problem_of([&] { read_number(fractions); }).id == "number-malformed");
  const Problem problem =
      problem_of([&] { read_amount(digits + " g", unit_table(), MeasuringSystem::us); });
  CHECK(problem.id == "number-too-long");
  CHECK(problem.found.size() < 200);
  // Hundreds of times what it takes, and far less than multiplying the digits out would.
  CHECK(std::chrono::steady_clock::now() - start < std::chrono::seconds(5));
}

TEST_CASE("ten megabytes of words behind a number are no unit") {
  std::string words = "1";
  while (words.size() < 10'000'000) words += " gribbles";
  const Problem problem =
      problem_of([&] { read_amount(words, unit_table(), MeasuringSystem::us); });
  CHECK(problem.id == "unit-unknown");
  CHECK(problem.found.size() < 200);
}
