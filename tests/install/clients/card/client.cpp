// SPDX-License-Identifier: MIT
// A client of the sheets alone: writes one of a problem.

#include <platewright/card/problem_sheet.hpp>
#include <platewright/card/writers.hpp>
#include <platewright/problem/catalogue/numbers.hpp>
#include <string>

int main() {
  platewright::ProblemList problems;
  problems.add(platewright::problems::number_not_positive("a weight", "-3 lb"));
  const std::string sheet = platewright::write_json(platewright::problem_sheet(problems, {}));
  return sheet.find("-3 lb") != std::string::npos ? 0 : 1;
}
