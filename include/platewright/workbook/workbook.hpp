// SPDX-License-Identifier: MIT
#pragma once
// A workbook as a plain value: words, numbers, and formulas with the figures that they come to.

#include <string>
#include <variant>
#include <vector>

#include "platewright/number/rational.hpp"
#include "platewright/quantity/currency.hpp"

namespace platewright {

/// A formula of a spreadsheet, without the `=` in front, and what the program found for it: the
/// figure that a reader shows until it works the formula out itself.
struct Formula {
  std::string text;
  Rational value;

  friend bool operator==(const Formula&, const Formula&) = default;
};

/// Words are never a formula, whatever sign they begin with.
using CellContent = std::variant<std::string, Rational, Formula>;

/// How the content is shown.
enum class CellLook {
  words,
  note,     ///< a remark, in slanted letters
  title,    ///< of a sheet
  heading,  ///< of a part or a column
  number,   ///< as many as four decimals
  share,    ///< as per cent
  money,    ///< to the minor unit
  price,    ///< money with as many as four more decimals
};

/// What the cell is for.
enum class CellRole {
  figure,
  input,  ///< to be changed by whoever works with the workbook
  total,
};

/// Rows and columns count from 0.
struct WorkbookCell {
  unsigned row = 0;
  unsigned column = 0;
  CellContent content;
  CellLook look = CellLook::words;
  CellRole role = CellRole::figure;

  friend bool operator==(const WorkbookCell&, const WorkbookCell&) = default;
};

struct WorkbookSheet {
  std::string name;            ///< at most 31 letters, as spreadsheets ask
  std::vector<double> widths;  ///< of the columns, in digits
  std::vector<WorkbookCell> cells;

  friend bool operator==(const WorkbookSheet&, const WorkbookSheet&) = default;
};

struct Workbook {
  std::string title;
  Currency currency = Currency("USD");  ///< of all money in it
  std::vector<WorkbookSheet> sheets;

  friend bool operator==(const Workbook&, const Workbook&) = default;
};

}  // namespace platewright
