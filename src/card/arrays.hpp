// SPDX-License-Identifier: MIT
#pragma once
// A sheet as flat tables, each under a name: what a program reads, in JSON and in CSV alike.

#include <string>
#include <vector>

#include "platewright/card/sheet.hpp"

namespace platewright::detail {

/// Rows of one kind: one cell for each key.
struct Array {
  std::string name;
  std::string title;  ///< as the page has it; may be empty
  std::vector<std::string> keys;
  std::vector<Row> rows;
};

/// All that the blocks of a sheet hold, in their order, without what is for a page alone. Blocks of
/// one array, as the orders of several suppliers or the parts of several recipes, are one. A
/// table's totals are `<name>_totals`, its notes `<name>_notes`, what a step uses `<name>_uses`;
/// a row of a part has it as `part`, a row under a sub-heading has that as `group`.
std::vector<Array> arrays_of(const Sheet& sheet);

}  // namespace platewright::detail
