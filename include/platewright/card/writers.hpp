// SPDX-License-Identifier: MIT
#pragma once
// The writers: one sheet, five formats. None of them computes; none of them throws for any data,
// valid UTF-8 or not.

#include <optional>
#include <string>
#include <vector>

#include "platewright/card/sheet.hpp"

namespace platewright {

struct TextOptions {
  /// Columns of the page; fewer than 40 count as 40, more than 1000 as 1000.
  unsigned width = 80;
  /// Only ASCII signs of our own: no drawn lines, no `°`, `×` or `–`. Letters in names stay.
  bool ascii = false;
  /// Lines of a page with its foot, `page n of m`; pages are parted by a form feed. 0 prints one
  /// long page without a foot; from 1 on, fewer than 20 count as 20,
  /// more than 1000 as 1000.
  unsigned lines_per_page = 0;
  /// For large print: headings in capitals, an empty line after every row and line.
  bool large = false;
};

/// The sheet as plain text, UTF-8, no line wider than the page (by display width: a wide character
/// counts two columns, a combining one none). Control characters and signs that turn the reading
/// direction are shown as escapes.
std::string write_text(const Sheet& sheet, const TextOptions& options = {});

/// The sheet as Markdown with pipe tables; boxes are block quotes. Names can't break out of their
/// place: what has a meaning in Markdown is escaped.
std::string write_markdown(const Sheet& sheet);

struct HtmlOptions {
  /// For large print: letters a third larger than those of a card.
  bool large = false;
};

/// The sheet as one page of HTML that needs nothing beside it: no script, no outside resource, the
/// style in the page; it can be read as XML too. Names are text, whatever stands in them. On paper
/// it is black on white, a row or box is not parted, a table's head stands again on the next page,
/// each card begins a page and labels have lines to cut along.
std::string write_html(const Sheet& sheet, const HtmlOptions& options = {});

/// The sheet as records (RFC 4180: CR LF, quotes doubled, every record equally long). Each block
/// has a heading record that begins with `section`, and its records begin with the block's key. A
/// figure gives three fields: the rounded number, then `<key> exact` (a decimal where one ends,
/// else numerator and denominator as `2 over 3`) and `<key> unit`. A spreadsheet makes a day of a
/// bare `2/3`, so none is written: words that it would take for one (`1/2`, `2-3`) or for a formula
/// (they begin with `=`, `+`, `-` or `@`) get an apostrophe in front; whole days are written as
/// `2027-10-09`, and stay days. The totals of a table begin with
/// `<key> total`, its notes with `<key> notes`, what a step uses with `<key> uses`; the blocks of a
/// part with `<part>/<key>`. Percent signs, currencies and scales stand in the field of the unit.
std::string write_csv(const Sheet& sheet);

/// The version of the shape below; another number means that a reader has to be changed.
inline constexpr int json_version = 1;

/// The sheet as JSON: `{"version": 1, "sheet": kind, "title": ..., "date": ..., "subtitles": [...],
/// "arrays": {name: [row, ...]}, "titles": {name: ...}, "sources": [...]}`. Each block of the sheet
/// is an array under its key; blocks of one kind (the orders of all suppliers, the parts of all
/// recipes) are one array, whose rows say whose they are. All rows of an array have the same keys:
/// those of a table's columns; `key`, `label`, `value` of a list of facts; `number`, `text` of
/// running text. A table's totals are `<name>_totals`, its notes `<name>_notes`, what a step uses
/// `<name>_uses`. Numbers are strings: a figure is `{"exact": "25/3", "shown": "8.33", "unit":
/// "lb"}`, with a `text` where a page prints another number for it (`1/2 cup + 3 tbsp`). Words are
/// strings, an empty cell is null; where cells of a column have footnotes, `<key>_source` is the
/// number in `sources`, or null. UTF-8, two spaces a level, a line end at the end; bytes that are
/// not UTF-8 come out as U+FFFD. `only`: this array and no other.
std::string write_json(const Sheet& sheet, const std::string& only = {});

/// The arrays of `write_json`, in their order.
std::vector<std::string> array_names(const Sheet& sheet);

/// One array as CSV with one heading record, for a spreadsheet or a script: fields as in
/// `write_csv`, but `<key>_exact`, `<key>_unit` and `<key>_source`. Nothing where the sheet has no
/// array of that name.
std::optional<std::string> write_array(const Sheet& sheet, const std::string& name);

}  // namespace platewright
