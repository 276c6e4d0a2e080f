// SPDX-License-Identifier: MIT
// A client that writes a workbook of one cell, or hears that the library for it was not there.

#include <platewright/problem/failure.hpp>
#include <platewright/workbook/write_workbook.hpp>
#include <string>

int main() {
  platewright::Workbook workbook;
  workbook.sheets.push_back({"cost", {12}, {{0, 0, std::string("lamb leg")}}});
  try {
    // Every file of the format is a ZIP archive.
    return platewright::write_workbook(workbook).substr(0, 2) == "PK" ? 0 : 1;
  } catch (const platewright::Failure& failure) {
    return failure.problem().id == "workbook-not-built" ? 0 : 1;
  }
}
