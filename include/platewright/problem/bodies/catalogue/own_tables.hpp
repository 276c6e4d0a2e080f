// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/problem/catalogue/own_tables.hpp.

#include <string>

#include "platewright/problem/catalogue/own_tables.hpp"

namespace platewright::problems {

PLATEWRIGHT_BODY Problem row_too_fine(std::string_view value) {
  return make_problem("row-too-fine", "the figure " + in_quotes(value),
                      "a fraction whose two parts have at most 18 digits",
                      "write the figure as its source prints it");
}

PLATEWRIGHT_BODY Problem row_count_differs(std::string_view what, std::size_t found,
                                           std::string_view each, std::size_t wanted) {
  return make_problem(
      "row-count", std::to_string(found) + " times " + std::string(what),
      std::string(what) + " for each of the " + std::to_string(wanted) + " in " + in_quotes(each),
      "compare the row with its source");
}

PLATEWRIGHT_BODY Problem row_without_source(std::string_view row) {
  return make_problem("row-without-source", in_quotes(row) + " has no source",
                      "the published source of the figure",
                      "name it, or write `common practice, no source` or `from memory`");
}

}  // namespace platewright::problems
