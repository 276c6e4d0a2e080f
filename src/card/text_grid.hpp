// SPDX-License-Identifier: MIT
#pragma once
// A table's texts, and how wide its columns are on a given page.

#include <optional>
#include <string>
#include <vector>

#include "card/text_bands.hpp"

namespace platewright::detail {

/// The texts of a table as they are printed, one for each column in every row.
struct Grid {
  std::vector<std::string> headings;
  std::vector<std::vector<std::vector<std::string>>> groups;
  std::vector<std::vector<std::string>> totals;
};

Grid grid_of(const TextPage& page, const Table& table);

struct GridLayout {
  std::vector<Band> bands;
  unsigned between = 2;
  unsigned margin = 0;
};

/// The widths that fit `page_width`: the natural ones where there is room; else headings over
/// figures are wrapped, then the columns of words are narrowed, the widest first, and in the end
/// the columns stand closer. Figures are never wrapped. Nothing where the table does not fit even
/// so.
std::optional<GridLayout> layout_of(const Table& table, const Grid& grid, unsigned page_width);

}  // namespace platewright::detail
