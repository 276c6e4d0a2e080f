// SPDX-License-Identifier: MIT
#pragma once
// A sheet that is written row by row.

#include <string>
#include <utility>
#include <vector>

#include "platewright/quantity/amount.hpp"
#include "platewright/quantity/money.hpp"
#include "platewright/workbook/workbook.hpp"

namespace platewright::pages {

/// Where a cell stands.
struct CellPlace {
  std::string sheet;
  unsigned row = 0;
  unsigned column = 0;
};

inline Rational plain(const Money& money) {
  return money.in(units::currency_unit);
}

/// The cells go into the row that is under way.
class Page {
 public:
  Page(std::string name, std::vector<double> widths) {
    sheet_.name = std::move(name);
    sheet_.widths = std::move(widths);
  }

  unsigned row() const { return row_; }
  void next(unsigned rows = 1) { row_ += rows; }
  /// Goes on in a row that was left open.
  void go_to(unsigned row) { row_ = row; }

  CellPlace words(unsigned column, std::string text, CellLook look = CellLook::words) {
    return put(column, std::move(text), look, CellRole::figure);
  }
  CellPlace number(unsigned column, Rational value, CellLook look = CellLook::number) {
    return put(column, std::move(value), look, CellRole::figure);
  }
  CellPlace input(unsigned column, Rational value, CellLook look) {
    return put(column, std::move(value), look, CellRole::input);
  }
  CellPlace formula(unsigned column, std::string text, Rational value, CellLook look,
                    CellRole role = CellRole::figure) {
    return put(column, Formula{std::move(text), std::move(value)}, look, role);
  }
  CellPlace formula(unsigned column, std::string text, const Money& value, CellLook look,
                    CellRole role = CellRole::figure) {
    return formula(column, std::move(text), plain(value), look, role);
  }

  /// The title and a note below it.
  void begin(std::string title, const std::vector<std::string>& notes);
  /// A row of column headings; an empty one is left out. Goes on to the next row.
  void headings(const std::vector<std::string>& texts);

  /// The place in a column of the row under way.
  CellPlace here(unsigned column) const { return {sheet_.name, row_, column}; }
  /// How a formula of this sheet names a cell, or the cells from one to another.
  std::string at(const CellPlace& place) const;
  std::string range(const CellPlace& first, const CellPlace& last) const;

  WorkbookSheet sheet() && { return std::move(sheet_); }

 private:
  CellPlace put(unsigned column, CellContent content, CellLook look, CellRole role) {
    sheet_.cells.push_back({row_, column, std::move(content), look, role});
    return here(column);
  }

  WorkbookSheet sheet_;
  unsigned row_ = 0;
};

}  // namespace platewright::pages
