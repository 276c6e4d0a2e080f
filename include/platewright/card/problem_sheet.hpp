// SPDX-License-Identifier: MIT
#pragma once
// The outcome of a check.

#include <string>
#include <vector>

#include "platewright/book/checked_files.hpp"
#include "platewright/card/sheet.hpp"
#include "platewright/problem/problem_list.hpp"

namespace platewright {

/// How many files were read, and whether each of those that are read by themselves is in order;
/// then every problem and warning with its place, for writers of records: the program prints
/// problems on a screen in its own way.
Sheet problem_sheet(const ProblemList& problems, const std::vector<std::string>& files,
                    const std::vector<SingleFile>& single = {});

}  // namespace platewright
