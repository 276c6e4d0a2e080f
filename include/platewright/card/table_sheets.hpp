// SPDX-License-Identifier: MIT
#pragma once
// The tables that are built in, as sheets, with the source of every row.

#include <string>
#include <vector>

#include "platewright/book/tables.hpp"
#include "platewright/card/sheet.hpp"

namespace platewright {

/// `table` is units, densities, pieces, cuts, produce, grains, vessels, safety, times or allergens;
/// only rows that hold all of `words` (capitals do not matter) are shown. Throws Failure where
/// there is none.
Sheet table_sheet(const std::string& name, const std::vector<std::string>& words,
                  const Tables& tables);

}  // namespace platewright
