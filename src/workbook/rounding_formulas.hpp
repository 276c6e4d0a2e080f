// SPDX-License-Identifier: MIT
#pragma once
// The roundings of the house as formulas of a spreadsheet. Each first takes off what binary
// fractions add to or take from a figure that is whole.

#include <optional>
#include <string>
#include <vector>

#include "workbook/page.hpp"

namespace platewright::pages {

/// Half up to the minor unit of the currency. `sum` is a cell or stands in brackets.
std::string half_up_formula(const std::string& sum, const Currency& currency);

/// Down to the minor unit, likewise.
std::string down_formula(const std::string& sum, const Currency& currency);

/// Up to a whole number.
std::string whole_up_formula(const std::string& number);

/// Up to a whole number of steps.
std::string up_to_formula(const std::string& sum, const std::string& step);

/// Where the columns of lines stand that are rounded so that they add up.
struct RoundedColumns {
  unsigned exact;
  unsigned remainder;  ///< what a line loses when it is rounded down, in minor units
  unsigned rounded;
};

/// Rounds the lines of the rows from `first` on, one for each of `costs`, and writes their total
/// into the row under way, which must be below them: the largest-remainder method, as `apportion`
/// says it. A line without a cost is left empty. Gives the place of the rounded total.
CellPlace round_lines(Page& page, unsigned first, const std::vector<std::optional<Money>>& costs,
                      const RoundedColumns& columns, const Currency& currency);

}  // namespace platewright::pages
