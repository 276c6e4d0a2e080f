// SPDX-License-Identifier: MIT
#pragma once
// A worked sheet held against a row of the table.

#include <string>

#include "platewright/problem/body.hpp"
#include "platewright/worksheet/worksheet.hpp"
#include "platewright/yield/yield_table.hpp"

namespace platewright {

/// The row beside what the sheet's tests came to; where the row is of another cut, it says so.
/// Throws Failure for a row that is not there.
HandbookRow held_against(const Worksheet& sheet, const std::string& name, const YieldTable& table);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/worksheet/bodies/hold_against.hpp"
#endif
