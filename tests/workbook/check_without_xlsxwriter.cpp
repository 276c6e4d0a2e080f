// SPDX-License-Identifier: MIT
// What a build without libxlsxwriter answers.

#include <exception>
#include <iostream>

#include "platewright/problem/failure.hpp"
#include "platewright/workbook/write_workbook.hpp"

int main() {
  try {
    static_cast<void>(platewright::write_workbook({}));
  } catch (const platewright::Failure& failure) {
    const platewright::Problem& problem = failure.problem();
    const bool names_it = problem.remedy.find("libxlsxwriter-dev") != std::string::npos;
    return problem.id == "workbook-not-built" && names_it ? 0 : 1;
  } catch (const std::exception& error) {
    std::cerr << error.what() << "\n";
  }
  return 1;
}
