// SPDX-License-Identifier: MIT
#pragma once
// Records of a CSV file (RFC 4180), with the position of every field.

#include <optional>
#include <string>
#include <vector>

#include "platewright/files/take_in_prices.hpp"
#include "platewright/problem/problem_list.hpp"

namespace platewright::csv {

struct Field {
  std::string text;
  int line = 0;
  int column = 0;  ///< in bytes, from 1
};

/// One record of as many fields as the header.
struct Record {
  std::vector<Field> fields;
  bool misquoted = false;
};

/// The header and the records below it.
struct Table {
  Record header;
  std::vector<Record> records;
};

/// Reads `text`: fields parted by `separator`, lines ended by CR LF or LF, a field in quotation
/// marks may hold all of these and doubled quotation marks. A byte order mark in front is left out,
/// empty lines are skipped, and so are headings between the rows: one field alone, with a warning.
/// Every stray quotation mark, unclosed field and record of another length
/// than the header's is reported at its place in `file`; then there is no table, unless such rows
/// are left out: they are warnings then, and only a field that is never closed or a broken header
/// leaves no table.
std::optional<Table> read_csv(const std::string& text, const std::string& file, char separator,
                              ProblemList& problems, BadRows bad_rows = BadRows::refused);

}  // namespace platewright::csv
