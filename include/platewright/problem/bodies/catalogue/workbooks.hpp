// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/problem/catalogue/workbooks.hpp.

#include <string>

#include "platewright/problem/catalogue/workbooks.hpp"

namespace platewright::problems {

PLATEWRIGHT_BODY Problem workbook_not_built() {
  return make_problem(
      "workbook-not-built", "this program was built without libxlsxwriter, which writes workbooks",
      "a program that was built with it",
      "install libxlsxwriter with its headers (Debian: libxlsxwriter-dev) and build "
      "again; until then `cost`, `quote` and `order` write CSV, which a spreadsheet "
      "opens");
}

PLATEWRIGHT_BODY Problem workbook_not_written(std::string_view reason) {
  return make_problem(
      "workbook-not-written", "a workbook that can't be made: " + in_quotes(reason),
      "room in memory and in the folders of temporary files (`/tmp`, and `TMPDIR` if set)",
      "make room there and try again; nothing was written");
}

PLATEWRIGHT_BODY Problem workbook_text_too_long(std::string_view text, std::size_t most) {
  return make_problem(
      "workbook-text-too-long", "a text that no cell of a workbook holds: " + in_quotes(text, 40),
      "at most " + std::to_string(most) + " signs", "shorten the name; nothing was written");
}

}  // namespace platewright::problems
