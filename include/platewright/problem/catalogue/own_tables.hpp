// SPDX-License-Identifier: MIT
#pragma once
// What can be wrong with a row of the tables, when they are turned into code or read from a user's
// own file.

#include <cstddef>
#include <string_view>

#include "platewright/problem/body.hpp"
#include "platewright/problem/problem.hpp"
#include "platewright/problem/text.hpp"

namespace platewright::problems {

inline Problem row_has_bar(std::string_view text) {
  return make_problem("row-bar", in_quotes(text), "a name without the sign |", "rename it");
}

Problem row_too_fine(std::string_view value);

Problem row_count_differs(std::string_view what, std::size_t found, std::string_view each,
                          std::size_t wanted);

Problem row_without_source(std::string_view row);

}  // namespace platewright::problems

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/problem/bodies/catalogue/own_tables.hpp"
#endif
