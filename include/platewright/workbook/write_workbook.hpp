// SPDX-License-Identifier: MIT
#pragma once
// A workbook as the bytes of a file.

#include <string>

#include "platewright/workbook/workbook.hpp"

namespace platewright {

/// The workbook in the format of Office Open XML (ECMA-376), `.xlsx`: the same bytes for the same
/// workbook. Numbers and figures are the nearest that a spreadsheet's floating-point numbers have,
/// to 16 digits. Bytes that are not UTF-8 come out as U+FFFD. Throws Failure where the library was
/// built without libxlsxwriter, for a text of more than 32767 signs, which no cell holds, and where
/// the machine has no room for it.
std::string write_workbook(const Workbook& workbook);

}  // namespace platewright
