// SPDX-License-Identifier: MIT
#pragma once
// A sheet: everything that stands on a page, computed and rounded, and no layout.

#include <string>
#include <utility>
#include <vector>

#include "platewright/card/blocks.hpp"
#include "platewright/card/sheet_kind.hpp"

namespace platewright {

/// The plain value between the computations and the writers. A builder fills it; `write_text`,
/// `write_markdown`, `write_html`, `write_csv` and `write_json` turn it into bytes and compute
/// nothing.
struct Sheet {
  explicit Sheet(SheetKind of) : kind(of) {}

  SheetKind kind;
  std::string title;
  /// Lines below the title: for whom, how many, on what the sheet rests.
  std::vector<std::string> subtitles;
  /// The date that the sheet speaks of, as it is to be printed; may be empty.
  std::string date;
  std::vector<Block> blocks;
  /// Sources and remarks, numbered from 1; cells point to them. Filled by `cite`.
  std::vector<std::string> footnotes;

  void add(Block block) { blocks.push_back(std::move(block)); }

  friend bool operator==(const Sheet&, const Sheet&) = default;
};

/// The number of the footnote that says `source`, added to the sheet where it is not there yet. An
/// empty source has the number 0, which prints nothing.
inline unsigned cite(Sheet& sheet, const std::string& source) {
  if (source.empty()) return 0;
  unsigned number = 0;
  for (const std::string& known : sheet.footnotes) {
    ++number;
    if (known == source) return number;
  }
  sheet.footnotes.push_back(source);
  return number + 1;
}

/// The cell with a footnote that says `source`.
inline Cell cited(Sheet& sheet, Cell cell, const std::string& source) {
  return with_footnote(std::move(cell), cite(sheet, source));
}

}  // namespace platewright
