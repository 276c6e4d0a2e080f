// SPDX-License-Identifier: MIT
#pragma once
// What a recipe says in two ways that can't both be meant.

#include "platewright/book/book.hpp"
#include "platewright/problem/problem_list.hpp"

namespace platewright {

/// Reports a weight beside `tested on` that is another, a brine that can't be, a step longer than
/// food is kept, and a yield of meat that was cooked otherwise. Needs names that the book has.
void check_contradictions(const Recipe& recipe, const Book& book, ProblemList& problems);

}  // namespace platewright
