// SPDX-License-Identifier: MIT
#pragma once
// The units that are built into the program.

#include <string>
#include <string_view>
#include <vector>

#include "platewright/problem/body.hpp"
#include "platewright/quantity/detail/unit_rows.hpp"
#include "platewright/quantity/unit.hpp"

namespace platewright {

/// The parts of a list that a built-in row joins by `|`.
std::vector<std::string> split_list(std::string_view joined);

/// The rows of `units-data/units.yaml`, in their order; made once.
const std::vector<Unit>& built_in_units();

/// The built-in unit of that name, as the table writes it: `pound`, `US cup`. Throws
/// std::out_of_range for another name: which names there are is known when a program is written.
const Unit& built_in_unit(std::string_view name);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/quantity/bodies/built_in_units.hpp"
#endif
