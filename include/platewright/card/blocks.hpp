// SPDX-License-Identifier: MIT
#pragma once
// What a sheet is made of. Every `key` is in snake_case: it names the block, column or fact in CSV
// and JSON and is part of the interface; it is unique among its neighbours.

#include <cstddef>
#include <string>
#include <utility>
#include <variant>
#include <vector>

#include "platewright/card/cell.hpp"
#include "platewright/card/drawing.hpp"

namespace platewright {

/// What a column holds: words stand left and wrap, figures stand right and keep to one line.
enum class ColumnKind { words, figures };

/// What a column is for. A page prints `shown` ones, in a row or, where the page is too narrow, one
/// below the other; the one that is `naming` the row then comes first. What is `data` is for
/// programs: the same facts in a form that they read, in CSV and JSON alone. What is for a `page`
/// alone, a box to tick or a line to write on, no program gets.
enum class ColumnUse { shown, naming, data, page };

struct Column {
  std::string key;
  std::string heading;
  ColumnKind kind = ColumnKind::words;
  ColumnUse use = ColumnUse::shown;

  friend bool operator==(const Column&, const Column&) = default;
};

inline Column words_column(std::string key, std::string heading) {
  return Column{std::move(key), std::move(heading), ColumnKind::words, ColumnUse::shown};
}
inline Column naming_column(std::string key, std::string heading) {
  return Column{std::move(key), std::move(heading), ColumnKind::words, ColumnUse::naming};
}
inline Column data_column(std::string key) {
  return Column{std::move(key), {}, ColumnKind::words, ColumnUse::data};
}
inline Column page_column(std::string key, std::string heading) {
  return Column{std::move(key), std::move(heading), ColumnKind::words, ColumnUse::page};
}
inline Column figures_column(std::string key, std::string heading) {
  return Column{std::move(key), std::move(heading), ColumnKind::figures, ColumnUse::shown};
}

/// One cell for each column; cells missing at the end are empty.
using Row = std::vector<Cell>;

/// Rows under a sub-heading (a component of a recipe, a supplier); an empty title prints none.
struct RowGroup {
  std::string title;
  std::vector<Row> rows;

  friend bool operator==(const RowGroup&, const RowGroup&) = default;
};

/// A table. The `totals` stand under a rule below the last group; the notes below the table.
struct Table {
  std::string key;
  std::string title;
  std::vector<Column> columns;
  std::vector<RowGroup> groups;
  std::vector<Row> totals;
  std::vector<std::string> notes;
  /// What its rows are called together with those of other tables of the sheet, for programs: the
  /// orders of all suppliers are one list. The key where it is empty.
  std::string array = {};

  /// Adds a row to the last group, opening one without a title where there is none yet.
  void add(Row row) {
    if (groups.empty()) groups.emplace_back();
    groups.back().rows.push_back(std::move(row));
  }
  /// Opens a group: the rows added next stand under `group_title`.
  void open_group(std::string group_title) { groups.push_back({std::move(group_title), {}}); }

  friend bool operator==(const Table&, const Table&) = default;
};

/// A table that is also drawn: for writers of text, and for who does not see a drawing, the table
/// is all there is; so it says the same.
struct Picture : Table {
  Drawing drawing;

  Picture(Table said, Drawing drawn) : Table(std::move(said)), drawing(std::move(drawn)) {}

  friend bool operator==(const Picture&, const Picture&) = default;
};

/// The table without its columns of one use.
inline Table without_columns(Table table, ColumnUse use) {
  const auto drop = [&](std::size_t column, Row& row) {
    if (column < row.size()) row.erase(row.begin() + static_cast<std::ptrdiff_t>(column));
  };
  for (std::size_t i = table.columns.size(); i-- > 0;) {
    if (table.columns[i].use != use) continue;
    table.columns.erase(table.columns.begin() + static_cast<std::ptrdiff_t>(i));
    for (RowGroup& group : table.groups) {
      for (Row& row : group.rows) drop(i, row);
    }
    for (Row& row : table.totals) drop(i, row);
  }
  return table;
}

/// The table as a page prints it: without the columns that are data.
inline Table for_a_page(Table table) {
  return without_columns(std::move(table), ColumnUse::data);
}

/// The table as a program reads it: without what is for a page alone.
inline Table for_a_program(Table table) {
  return without_columns(std::move(table), ColumnUse::page);
}

struct Fact {
  std::string key;
  std::string label;
  Cell value;

  friend bool operator==(const Fact&, const Fact&) = default;
};

/// A list of labels with their values. Where all values are figures they stand in line on the
/// right, unless `kind` says words.
struct Facts {
  std::string key;
  std::string title;
  std::vector<Fact> facts;
  ColumnKind kind = ColumnKind::figures;

  void add(std::string fact_key, std::string label, Cell value) {
    facts.push_back({std::move(fact_key), std::move(label), std::move(value)});
  }

  friend bool operator==(const Facts&, const Facts&) = default;
};

/// Running text: notes, terms, the arithmetic of a worked line. The title may be empty.
struct Paragraphs {
  std::string key;
  std::string title;
  std::vector<std::string> texts;

  friend bool operator==(const Paragraphs&, const Paragraphs&) = default;
};

/// A line under a step: what the step uses, with its scaled amount (which may be empty), and the
/// same in other measures where the sheet has both.
struct StepLine {
  Cell amount;
  std::string text;
  Cell beside = {};

  friend bool operator==(const StepLine&, const StepLine&) = default;
};

/// One step of a method. `takes` is its time, empty where none is stated.
struct Step {
  std::string text;
  Cell takes;
  std::vector<StepLine> lines;

  friend bool operator==(const Step&, const Step&) = default;
};

/// Steps numbered from 1.
struct Steps {
  std::string key;
  std::string title;
  std::vector<Step> steps;
  std::string beside = {};  ///< the key of the amounts in other measures: `metric`

  friend bool operator==(const Steps&, const Steps&) = default;
};

/// What must not be overlooked (allergens, cautions, critical limits): printed in a drawn frame.
struct Box {
  std::string key;
  std::string title;
  std::vector<std::string> lines;

  friend bool operator==(const Box&, const Box&) = default;
};

/// One bar: its length relative to the longest is `share`, which is not negative. `share_text` is
/// the share as it is printed after the value; empty prints none.
struct Bar {
  std::string key;
  std::string label;
  Rational share;
  Cell value;
  Cell share_text = {};

  friend bool operator==(const Bar&, const Bar&) = default;
};

/// Bars one below the other, as for the weight that each rung of a yield ladder leaves.
struct Bars {
  std::string key;
  std::string title;
  std::vector<Bar> bars;

  friend bool operator==(const Bars&, const Bars&) = default;
};

/// Lines to sign on, each over its label.
struct Signatures {
  std::string key;
  std::vector<std::string> labels;

  friend bool operator==(const Signatures&, const Signatures&) = default;
};

/// Begins a part of the sheet (one recipe of several): the blocks after it, up to the next part,
/// are its own, and their keys need to be unique in it alone.
struct Part {
  std::string key;
  std::string title;

  friend bool operator==(const Part&, const Part&) = default;
};

using Block = std::variant<Facts, Table, Picture, Paragraphs, Steps, Box, Bars, Signatures, Part>;

}  // namespace platewright
