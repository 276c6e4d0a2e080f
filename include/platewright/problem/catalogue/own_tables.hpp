// SPDX-License-Identifier: MIT
#pragma once
// What can be wrong with a row of the tables, when they are turned into code or read from a user's
// own file.

#include <cstddef>
#include <string>
#include <string_view>

#include "platewright/problem/problem.hpp"
#include "platewright/problem/text.hpp"

namespace platewright::problems {

inline Problem row_has_bar(std::string_view text) {
  return make_problem("row-bar", in_quotes(text), "a name without the sign |", "rename it");
}

inline Problem row_too_fine(std::string_view value) {
  return make_problem("row-too-fine", "the figure " + in_quotes(value),
                      "a fraction whose two parts have at most 18 digits",
                      "write the figure as its source prints it");
}

inline Problem row_count_differs(std::string_view what, std::size_t found, std::string_view each,
                                 std::size_t wanted) {
  return make_problem(
      "row-count", std::to_string(found) + " times " + std::string(what),
      std::string(what) + " for each of the " + std::to_string(wanted) + " in " + in_quotes(each),
      "compare the row with its source");
}

inline Problem row_without_source(std::string_view row) {
  return make_problem("row-without-source", in_quotes(row) + " has no source",
                      "the published source of the figure",
                      "name it, or write `common practice, no source` or `from memory`");
}

}  // namespace platewright::problems
