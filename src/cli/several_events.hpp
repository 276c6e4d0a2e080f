// SPDX-License-Identifier: MIT
#pragma once
// Events that are ordered for together.

#include <vector>

#include "cli/arguments.hpp"
#include "platewright/event/occasion.hpp"
#include "platewright/files/read_book.hpp"
#include "platewright/problem/problem_list.hpp"

namespace platewright::cli {

/// Each event with the prices of its own book on its own day, changed and chosen as asked; all of
/// them in the currency in which the files together reckon. Throws Failure and WrongArgument.
std::vector<Occasion> occasions_asked(const PriceOptions& options, const EventBooks& books,
                                      ProblemList& problems);

}  // namespace platewright::cli
