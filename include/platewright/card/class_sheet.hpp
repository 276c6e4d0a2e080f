// SPDX-License-Identifier: MIT
#pragma once
// The marks of a class on one sheet.

#include <vector>

#include "platewright/card/sheet.hpp"
#include "platewright/worksheet/class_marks.hpp"

namespace platewright {

/// A row for each student and a column for each answer, and beneath them the slips, the most common
/// first. The two tests of a worksheet have a table each.
Sheet class_sheet(const std::vector<StudentSheet>& students);

}  // namespace platewright
