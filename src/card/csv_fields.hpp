// SPDX-License-Identifier: MIT
#pragma once
// Which fields the cells of one column of a CSV file need.

#include <string>

#include "card/records.hpp"
#include "platewright/card/cell.hpp"

namespace platewright::detail {

/// A decimal where one ends; else numerator and denominator, in a form that no spreadsheet takes
/// for a day, a time or a negative number, as it does `2/3`, `2:3` and `(2)`.
std::string exact_field(const Rational& value);

struct Fields {
  bool exact = false;
  bool unit = false;
  bool source = false;

  void need(const Cell& cell) {
    exact = exact || cell.exact.has_value();
    unit = unit || !cell.unit.empty();
    source = source || cell.footnote != 0;
  }

  /// The names of the column's fields; `between` stands in them behind the key.
  void name(Record& record, const std::string& key, char between = ' ') const {
    record.push_back(key);
    if (exact) record.push_back(key + between + "exact");
    if (unit) record.push_back(key + between + "unit");
    if (source) record.push_back(key + between + "source");
  }

  void fill(Record& record, const Cell& cell) const {
    record.push_back(guarded(cell.exact ? cell.shown : cell.text));
    if (exact) record.push_back(cell.exact ? exact_field(*cell.exact) : "");
    if (unit) record.push_back(guarded(cell.unit));
    if (source) record.push_back(cell.footnote == 0 ? "" : std::to_string(cell.footnote));
  }
};

}  // namespace platewright::detail
