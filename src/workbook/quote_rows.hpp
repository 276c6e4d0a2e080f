// SPDX-License-Identifier: MIT
#pragma once
// Rows of the sheet `Quote`: a sum with its formula, what it comes to, and what was planned.

#include <string>

#include "platewright/costing/quote.hpp"
#include "workbook/page.hpp"

namespace platewright::pages {

class QuoteRows {
 public:
  QuoteRows(Page& page, const Currency& currency) : page_(page), currency_(currency) {}

  Page& page() const { return page_; }
  const Currency& currency() const { return currency_; }
  std::string at(const CellPlace& place) const { return page_.at(place); }

  /// A figure of this sheet: exact, and rounded half up. Gives the exact one.
  CellPlace sum(const std::string& label, const std::string& formula, const Money& value) const;
  /// A sum that is to be paid, rounded by its formula already.
  CellPlace paid(const std::string& label, const std::string& formula, const Money& value,
                 CellRole role = CellRole::figure) const;
  /// A share of something.
  CellPlace share(const std::string& label, const std::string& formula,
                  const Rational& value) const;

  /// All of a column from the row `first` to the one before the row under way.
  std::string column_sum(unsigned column, unsigned first) const;
  /// The cells, added up; `0` where there are none.
  std::string added(const std::vector<CellPlace>& cells) const;

 private:
  Page& page_;
  const Currency& currency_;
};

/// A figure of the plan inside a formula: `20`, `(1/3)`.
std::string number_formula(const Rational& number);

}  // namespace platewright::pages
