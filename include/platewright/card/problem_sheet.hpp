#pragma once
// The outcome of a check.

#include <string>
#include <vector>

#include "platewright/card/sheet.hpp"
#include "platewright/problem/problem_list.hpp"

namespace platewright {

/// Every problem and warning with its place, for writers of records; the program prints problems on
/// a screen in its own way.
Sheet problem_sheet(const ProblemList& problems, const std::vector<std::string>& files);

}  // namespace platewright
