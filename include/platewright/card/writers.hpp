#pragma once
// The writers: one sheet, five formats. None of them computes; none of them throws for any data,
// valid UTF-8 or not.

#include <string>

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

/// The sheet as JSON: `{"sheet": kind, "title": ..., "sections": {key: ...}}`. Numbers are strings:
/// a figure is `{"exact": "25/3", "shown": "8.33", "unit": "lb"}`. Keys are those of the blocks,
/// columns and facts; where a cell has a footnote, `<key>_source` is its number in `sources`. Words
/// are strings, an empty cell is null, a row under a sub-heading has it as `group`; a figure whose
/// page text is not its number and unit has that as `text`. The blocks of a part stand in its own
/// `sections`. UTF-8, two spaces a level, a line end at the end; bytes that are not UTF-8 come out
/// as U+FFFD.
std::string write_json(const Sheet& sheet);

}  // namespace platewright
