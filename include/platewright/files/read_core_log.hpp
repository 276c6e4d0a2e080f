// SPDX-License-Identifier: MIT
#pragma once
// The log of a thermometer.

#include <optional>
#include <string>

#include "platewright/heat/core_curve.hpp"
#include "platewright/problem/problem_list.hpp"

namespace platewright {

/// Reads a CSV file whose first line names its two units: `seconds`, `minutes` or `hours` from the
/// start, and `F` or `C`; then a reading in each line. Every problem goes into `problems` at its
/// line: other columns, figures that are none, temperatures that no core has, disorder, gaps, too
/// few readings. No line is left out: where there is an error there is no curve.
std::optional<CoreCurve> read_core_log(const std::string& file, ProblemList& problems);

}  // namespace platewright
