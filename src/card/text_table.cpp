// SPDX-License-Identifier: MIT
#include "card/text_table.hpp"

#include <algorithm>
#include <cstddef>

#include "card/text_grid.hpp"
#include "platewright/card/display.hpp"

namespace platewright::detail {

namespace {

std::string rule_of(const TextPage& page, const GridLayout& layout) {
  std::string rule(layout.margin, ' ');
  for (std::size_t i = 0; i < layout.bands.size(); ++i) {
    if (i != 0) rule.append(layout.between, ' ');
    rule += repeated(page.signs().light_rule, layout.bands[i].width);
  }
  return rule;
}

/// The headings stand low, so that each is right above its column.
std::vector<std::string> heading_lines(const TextPage& page, const Grid& grid,
                                       const GridLayout& layout) {
  std::vector<std::vector<std::string>> wrapped_headings;
  std::size_t height = 0;
  for (std::size_t i = 0; i < layout.bands.size(); ++i) {
    wrapped_headings.push_back(wrapped(grid.headings[i], layout.bands[i].width));
    height = std::max(height, wrapped_headings.back().size());
  }
  std::vector<std::string> out;
  for (std::size_t row = 0; row < height; ++row) {
    std::vector<std::string> texts;
    for (const std::vector<std::string>& lines : wrapped_headings) {
      const std::size_t above = height - lines.size();
      texts.push_back(row < above ? "" : lines[row - above]);
    }
    out.push_back(lines_of_bands(layout.bands, texts, layout.between, layout.margin).front());
  }
  out.push_back(rule_of(page, layout));
  return out;
}

bool has_headings(const Table& table) {
  return std::any_of(table.columns.begin(), table.columns.end(),
                     [](const Column& column) { return !column.heading.empty(); });
}

void print_rows(TextPage& page, const Table& table, const Grid& grid, const GridLayout& layout) {
  if (has_headings(table)) {
    const std::vector<std::string> headings = heading_lines(page, grid, layout);
    for (const std::string& heading : headings) page.line(heading, true);
    page.begin_running_heading(headings);
  }
  for (std::size_t g = 0; g < grid.groups.size(); ++g) {
    const bool before_totals = g + 1 == grid.groups.size() && !grid.totals.empty();
    if (!table.groups[g].title.empty()) {
      if (g != 0) page.gap();
      page.text(page.prepared(table.groups[g].title), 0, true);
    }
    for (std::size_t r = 0; r < grid.groups[g].size(); ++r) {
      const bool last = before_totals && r + 1 == grid.groups[g].size();
      print_bands(page, layout.bands, grid.groups[g][r], layout.between, layout.margin, last);
      if (page.large()) page.gap();
    }
  }
  if (!grid.totals.empty()) page.line(rule_of(page, layout), true);
  for (std::size_t r = 0; r < grid.totals.size(); ++r) {
    const bool more = r + 1 < grid.totals.size();
    print_bands(page, layout.bands, grid.totals[r], layout.between, layout.margin, more);
  }
  page.begin_running_heading({});
}

/// The columns with the one that names the row before all others.
std::vector<std::size_t> naming_first(const Table& table) {
  std::vector<std::size_t> order(table.columns.size());
  for (std::size_t i = 0; i < order.size(); ++i) order[i] = i;
  std::stable_partition(order.begin(), order.end(), [&](std::size_t column) {
    return table.columns[column].use == ColumnUse::naming;
  });
  return order;
}

/// One row with each value on its own line, under its heading's name.
void print_record(TextPage& page, const Table& table, const std::vector<std::string>& row) {
  const std::vector<std::size_t> order = naming_first(table);
  bool first = true;
  for (const std::size_t i : order) {
    if (row[i].find_first_not_of("\u00A0 ") == std::string::npos) continue;
    std::string name = page.prepared(table.columns[i].heading);
    if (!name.empty()) name += ": ";
    const std::string indent = first ? "" : "\u00A0\u00A0";
    page.text(indent + name + row[i], 4, i != order.back());
    first = false;
  }
  page.gap();
}

void print_records(TextPage& page, const Table& table, const Grid& grid) {
  for (std::size_t g = 0; g < grid.groups.size(); ++g) {
    const std::string group = page.prepared(table.groups[g].title);
    if (!group.empty()) {
      page.gap();
      page.text(group, 0, true);
      page.line(repeated(page.signs().light_rule, page.width()), true);
    }
    for (const std::vector<std::string>& row : grid.groups[g]) print_record(page, table, row);
  }
  if (!grid.totals.empty()) {
    page.line(repeated(page.signs().light_rule, page.width()), true);
  }
  for (const std::vector<std::string>& row : grid.totals) print_record(page, table, row);
}

}  // namespace

void print_table(TextPage& page, const Table& whole) {
  const Table table = for_a_page(whole);
  page.heading(table.title);
  const Grid grid = grid_of(page, table);
  if (const auto layout = layout_of(table, grid, page.width())) {
    print_rows(page, table, grid, *layout);
  } else {
    print_records(page, table, grid);
  }
  if (!table.notes.empty()) page.gap();
  for (const std::string& note : table.notes) page.text(page.prepared(note));
}

}  // namespace platewright::detail
