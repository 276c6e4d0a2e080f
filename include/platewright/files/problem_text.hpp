// SPDX-License-Identifier: MIT
#pragma once
// Problems as they are printed.

#include <functional>
#include <string>

#include "platewright/problem/problem_list.hpp"

namespace platewright {

/// Every problem with its place, the line it stands on, what was found and expected, and what to
/// do. `shown` turns the words that one begins with into what is to be shown of them, as in colour.
std::string problem_text(const ProblemList& problems,
                         const std::function<std::string(const std::string& head)>& shown = {});

}  // namespace platewright
