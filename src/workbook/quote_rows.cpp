// SPDX-License-Identifier: MIT
#include "workbook/quote_rows.hpp"

#include "platewright/costing/round_money.hpp"
#include "workbook/quote_columns.hpp"

namespace platewright::pages {

CellPlace QuoteRows::sum(const std::string& label, const std::string& formula,
                         const Money& value) const {
  const Rational shown = plain(round_money(value, minor_unit(currency_), Rounding::half_up));
  page_.words(QuoteColumn::line, label);
  const auto out = page_.formula(QuoteColumn::exact, formula, value, CellLook::price);
  page_.formula(QuoteColumn::rounded, half_up_formula(at(out), currency_), shown, CellLook::money);
  page_.number(QuoteColumn::planned, shown, CellLook::money);
  page_.next();
  return out;
}

CellPlace QuoteRows::paid(const std::string& label, const std::string& formula, const Money& value,
                          CellRole role) const {
  page_.words(QuoteColumn::line, label);
  const auto out = page_.formula(QuoteColumn::rounded, formula, value, CellLook::money, role);
  page_.number(QuoteColumn::planned, plain(value), CellLook::money);
  page_.next();
  return out;
}

CellPlace QuoteRows::share(const std::string& label, const std::string& formula,
                           const Rational& value) const {
  page_.words(QuoteColumn::line, label);
  const auto out = page_.formula(QuoteColumn::exact, formula, value, CellLook::share);
  page_.next();
  return out;
}

std::string QuoteRows::column_sum(unsigned column, unsigned first) const {
  const std::string sheet = page_.here(0).sheet;
  return "SUM(" + page_.range({sheet, first, column}, {sheet, page_.row() - 1, column}) + ")";
}

std::string QuoteRows::added(const std::vector<CellPlace>& cells) const {
  std::string out;
  for (const CellPlace& cell : cells) out += (out.empty() ? "" : "+") + at(cell);
  return out.empty() ? "0" : out;
}

std::string number_formula(const Rational& number) {
  const std::string text = as_exact(number);
  return text.find('/') == std::string::npos ? text : "(" + text + ")";
}

}  // namespace platewright::pages
