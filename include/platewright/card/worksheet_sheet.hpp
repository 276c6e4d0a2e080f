#pragma once
// A worksheet with its working, a student's answers marked, and the handbook beside it.

#include "platewright/card/sheet.hpp"
#include "platewright/worksheet/kept_tests.hpp"
#include "platewright/worksheet/worksheet.hpp"

namespace platewright {

/// The trim test, the cooking loss test, or both: the parts, every step as it is worked with a
/// pencil, the answers with their marks, and the table's yields beside the tested ones.
Sheet worksheet_sheet(const Worksheet& worksheet);

/// Trials that are kept: both averages, number, standard deviation and range of each step.
Sheet trials_sheet(const KeptResult& kept);

}  // namespace platewright
