// SPDX-License-Identifier: MIT
#pragma once
// Records for a file of comma-separated values.

#include <string>
#include <string_view>
#include <vector>

namespace platewright::detail {

using Record = std::vector<std::string>;

/// Words as a field: an apostrophe in front of what a spreadsheet would take for a formula, or make
/// a day of (`1/2`). A plain number with its sign is no formula, and `2027-10-09` is a day.
std::string guarded(std::string_view words);

/// The records as RFC 4180 wants them: parted by CR LF, fields quoted where they need it, every
/// record as long as the longest.
std::string written(const std::vector<Record>& records);

}  // namespace platewright::detail
