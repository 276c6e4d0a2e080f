// SPDX-License-Identifier: MIT
#include <algorithm>
#include <cstddef>

#include "card/html/blocks.hpp"
#include "platewright/card/display.hpp"

namespace platewright::detail {
namespace {

/// Words longer than this may be broken: none of a kitchen's is.
constexpr unsigned longest_whole_word = 22;

/// `Sat 10-09 14:40`, and no longer.
constexpr unsigned longest_glance = 16;

/// Rows of a table that is better moved to the next page than parted.
constexpr std::size_t few_rows = 7;

const Cell& cell_at(const Row& row, std::size_t column) {
  static const Cell none;
  return column < row.size() ? row[column] : none;
}

template <class Look>
void for_each_row(const Table& table, Look&& look) {
  for (const RowGroup& group : table.groups) {
    std::for_each(group.rows.begin(), group.rows.end(), look);
  }
  std::for_each(table.totals.begin(), table.totals.end(), look);
}

/// What a column takes, in letters, and its class in the style.
struct Layout {
  unsigned least = 0;  ///< with what is on one line
  unsigned words = 0;  ///< where all may be broken between words
  std::string look;
};

/// Times, days and amounts in words are read as figures are: in one glance, so on one line.
Layout layout_of(const Table& table, std::size_t column) {
  unsigned widest = 0;
  unsigned longest = 0;
  for_each_row(table, [&](const Row& row) {
    const std::string& text = cell_at(row, column).text;
    widest = std::max(widest, display_width(text));
    longest = std::max(longest, longest_word(text));
  });
  const unsigned heading = longest_word(table.columns[column].heading);
  const bool figures = table.columns[column].kind == ColumnKind::figures;
  if (!figures) longest = std::min(longest, longest_whole_word);
  const bool brief = widest <= longest_glance;
  const char* look = figures ? "figures" : brief ? "words brief" : "words";
  return {std::max(heading, figures || brief ? widest : longest), std::max(heading, longest), look};
}

/// A table with what was measured of it.
struct Measured {
  const Table& table;
  std::vector<Layout> columns;
  bool is_short = false;
  std::string fit;  ///< class in the style, where letters have to be smaller
};

Measured measured(const HtmlPlace& place, const Table& table) {
  Measured out{table, {}, false, {}};
  unsigned least = 0;
  unsigned words = 0;
  for (std::size_t i = 0; i < table.columns.size(); ++i) {
    out.columns.push_back(layout_of(table, i));
    least += out.columns.back().least + 2;
    words += out.columns.back().words + 2;
  }
  std::size_t rows = table.groups.size();
  for_each_row(table, [&](const Row&) { ++rows; });
  out.is_short = rows <= few_rows;
  if (least > place.room) out.fit = words > place.room ? " crowded packed" : " crowded";
  return out;
}

std::string class_of(const Layout& column, const std::string& text) {
  return longest_word(text) > longest_whole_word ? column.look + " long" : column.look;
}

void put_row(Html& html, const Measured& measured, const Row& row) {
  html.line("tr", {}, [&] {
    for (std::size_t i = 0; i < measured.columns.size(); ++i) {
      const Cell& cell = cell_at(row, i);
      Attributes attributes{{"class", class_of(measured.columns[i], cell.text)}};
      const auto inside = [&] { put_cell(html, cell); };
      if (measured.table.columns[i].use == ColumnUse::naming && !cell.text.empty()) {
        attributes.push_back({"scope", "row"});
        html.element("th", attributes, inside);
      } else {
        html.element("td", attributes, inside);
      }
    }
  });
}

std::string all_columns(const Measured& measured) {
  return std::to_string(measured.columns.size());
}

/// On paper, where the head of a long table stands on each of its pages, its title stands there
/// too.
void put_title_again(Html& html, const Measured& measured) {
  html.line("tr", {{"class", "again"}, {"aria-hidden", "true"}}, [&] {
    html.element("th", {{"colspan", all_columns(measured)}}, measured.table.title);
  });
}

void put_headings(Html& html, const Measured& measured) {
  html.lines("thead", {}, [&] {
    if (!measured.table.title.empty() && !measured.is_short) put_title_again(html, measured);
    html.line("tr", {}, [&] {
      for (std::size_t i = 0; i < measured.columns.size(); ++i) {
        const std::string& heading = measured.table.columns[i].heading;
        if (heading.empty()) {
          html.element("td", {}, "");
        } else {
          html.element("th", {{"class", class_of(measured.columns[i], heading)}, {"scope", "col"}},
                       heading);
        }
      }
    });
  });
}

void put_group(Html& html, const Measured& measured, const RowGroup& group) {
  if (group.rows.empty() && group.title.empty()) return;
  html.lines("tbody", {}, [&] {
    if (!group.title.empty()) {
      html.line("tr", {{"class", "group"}}, [&] {
        html.element("th", {{"scope", "rowgroup"}, {"colspan", all_columns(measured)}},
                     group.title);
      });
    }
    for (const Row& row : group.rows) put_row(html, measured, row);
  });
}

}  // namespace

void put_block(Html& html, const HtmlPlace& place, const Table& whole) {
  const Table table = for_a_page(whole);
  const Measured measured = detail::measured(place, table);
  const std::string look = measured.is_short ? "short" : "long-table";
  html.lines("section", {}, [&] {
    html.lines("table", {{"class", look + measured.fit}}, [&] {
      if (!table.title.empty()) {
        html.line("caption", {}, [&] { put_heading(html, place, table.title); });
      }
      put_headings(html, measured);
      for (const RowGroup& group : table.groups) put_group(html, measured, group);
      if (!table.totals.empty()) {
        html.lines("tbody", {{"class", "totals"}}, [&] {
          for (const Row& row : table.totals) put_row(html, measured, row);
        });
      }
    });
    for (const std::string& note : table.notes) html.line("p", {{"class", "note"}}, note);
  });
}

}  // namespace platewright::detail
