// SPDX-License-Identifier: MIT
#pragma once
// Whether a book can be worked with.

#include "platewright/book/book.hpp"
#include "platewright/problem/problem_list.hpp"

namespace platewright {

/// All that can be known to be wrong with the book before anything is asked of it: names that it
/// does not have, circles, shares of nothing, rules and amounts that lead nowhere, portions that
/// the meat does not serve, by-products worth more than the piece, food of which it does not say
/// what it is. Each problem stands at the place that its recipe, line or ingredient names. The book
/// stays as it is.
ProblemList check(const Book& book);

}  // namespace platewright
