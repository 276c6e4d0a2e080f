// SPDX-License-Identifier: MIT
#include "card/text_grid.hpp"

#include <algorithm>
#include <cstddef>

#include "platewright/card/display.hpp"

namespace platewright::detail {

namespace {

/// A column of words is not narrowed below its longest word, unless that word is longer than this.
constexpr unsigned narrowest_words = 12;

struct Measure {
  ColumnKind kind = ColumnKind::words;
  unsigned width = 2;
  unsigned smallest = 2;
};

const Cell& cell_at(const Row& row, std::size_t column) {
  static const Cell empty;
  return column < row.size() ? row[column] : empty;
}

template <class Visit>
void for_each_row(const Table& table, const Visit& visit) {
  for (const RowGroup& group : table.groups) {
    for (const Row& row : group.rows) visit(row);
  }
  for (const Row& row : table.totals) visit(row);
}

/// How wide the footnote markers of each column are, with the space before them.
std::vector<unsigned> marker_widths(const Table& table) {
  std::vector<unsigned> out(table.columns.size());
  for_each_row(table, [&](const Row& row) {
    for (std::size_t i = 0; i < out.size(); ++i) {
      const std::string marker = TextPage::marker(cell_at(row, i).footnote);
      if (!marker.empty()) out[i] = std::max(out[i], 1 + display_width(marker));
    }
  });
  return out;
}

/// A figure with room for a marker after it, so that figures with and without one stay in line.
std::string figure_text(const TextPage& page, const Cell& cell, unsigned marker_width) {
  std::string marker = TextPage::marker(cell.footnote);
  if (!marker.empty()) marker.insert(0, " ");
  return held_together(page.prepared(cell.text) + padded_after(marker, marker_width));
}

std::vector<std::string> row_texts(const TextPage& page, const Table& table, const Row& row,
                                   const std::vector<unsigned>& markers) {
  std::vector<std::string> out;
  for (std::size_t i = 0; i < table.columns.size(); ++i) {
    const Cell& cell = cell_at(row, i);
    const bool figures = table.columns[i].kind == ColumnKind::figures;
    out.push_back(figures ? figure_text(page, cell, markers[i]) : page.prepared(cell));
  }
  return out;
}

std::vector<Measure> measures_of(const Table& table, const Grid& grid, unsigned page_width) {
  std::vector<Measure> out;
  for (std::size_t i = 0; i < table.columns.size(); ++i) {
    unsigned widest = 0;
    unsigned longest = longest_word(grid.headings[i]);
    const auto look_at = [&](const std::vector<std::string>& row) {
      widest = std::max(widest, display_width(row[i]));
      longest = std::max(longest, longest_word(row[i]));
    };
    for (const auto& group : grid.groups) std::for_each(group.begin(), group.end(), look_at);
    std::for_each(grid.totals.begin(), grid.totals.end(), look_at);
    const unsigned heading = display_width(grid.headings[i]);
    Measure measure;
    measure.kind = table.columns[i].kind;
    measure.width = std::max({2U, widest, heading});
    measure.smallest = measure.kind == ColumnKind::figures
                           ? std::max({2U, widest, longest_word(grid.headings[i])})
                           : std::max(2U, std::min(longest, narrowest_words));
    // Past the page it makes no difference how wide, and narrowing goes a column at a time.
    measure.width = std::min(measure.width, page_width + 1);
    out.push_back(measure);
  }
  return out;
}

/// Narrows the widest column of the kind by one; false where all are as narrow as they can be.
bool narrow_one(std::vector<Measure>& measures, ColumnKind kind) {
  Measure* widest = nullptr;
  for (Measure& measure : measures) {
    if (measure.kind != kind || measure.width <= measure.smallest) continue;
    if (widest == nullptr || measure.width > widest->width) widest = &measure;
  }
  if (widest != nullptr) --widest->width;
  return widest != nullptr;
}

unsigned total_width(const std::vector<Measure>& measures, const GridLayout& layout) {
  unsigned width = layout.margin;
  for (const Measure& measure : measures) width += measure.width + layout.between;
  return measures.empty() ? width : width - layout.between;
}

}  // namespace

Grid grid_of(const TextPage& page, const Table& table) {
  const std::vector<unsigned> markers = marker_widths(table);
  Grid grid;
  for (std::size_t i = 0; i < table.columns.size(); ++i) {
    const Column& column = table.columns[i];
    grid.headings.push_back(page.prepared(column.heading));
    if (column.kind == ColumnKind::figures && markers[i] > 0) {
      grid.headings.back() += held_together(std::string(markers[i], ' '));
    }
  }
  for (const RowGroup& group : table.groups) {
    grid.groups.emplace_back();
    for (const Row& row : group.rows) {
      grid.groups.back().push_back(row_texts(page, table, row, markers));
    }
  }
  for (const Row& row : table.totals) grid.totals.push_back(row_texts(page, table, row, markers));
  return grid;
}

std::optional<GridLayout> layout_of(const Table& table, const Grid& grid, unsigned page_width) {
  std::vector<Measure> measures = measures_of(table, grid, page_width);
  GridLayout layout;
  const bool grouped = std::any_of(table.groups.begin(), table.groups.end(),
                                   [](const RowGroup& group) { return !group.title.empty(); });
  layout.margin = grouped ? 2 : 0;
  layout.between = 3;
  if (total_width(measures, layout) > page_width) layout.between = 2;
  while (total_width(measures, layout) > page_width) {
    if (narrow_one(measures, ColumnKind::figures)) continue;
    if (narrow_one(measures, ColumnKind::words)) continue;
    if (layout.between == 1) return std::nullopt;
    layout.between = 1;
  }
  for (const Measure& measure : measures) layout.bands.push_back({measure.kind, measure.width});
  return layout;
}

}  // namespace platewright::detail
