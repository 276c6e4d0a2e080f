#pragma once
// The figures of a worksheet, as a student writes them.

#include <string>

#include "platewright/card/cell.hpp"
#include "platewright/worksheet/worksheet.hpp"

namespace platewright::card {

/// A weight in pounds and ounces, exact to 1/100 oz, or in kilograms to the gram.
Cell exact_weight_cell(const Mass& mass, WeighedIn weights);

/// Writes the figures of one worksheet: its currency, its weights.
class FigureWriter {
 public:
  explicit FigureWriter(const Worksheet& sheet) : sheet_(sheet) {}

  /// The figure of the step or term of that name.
  Cell cell(FigureForm form, const Figure& value) const;
  /// `120.00 - 36.00 = 84.00`.
  std::string line(const WorkingStep& step) const;
  /// `6.65 per lb`.
  Cell price(const PricePerMass& value) const;
  /// `6.65`, below a heading that says what it is for.
  Cell price_in_column(const PricePerMass& value) const;
  /// `66.80`; as many as two places more where they say it exactly, so that a calculator shows the
  /// same, and two more of what is below one currency unit.
  Cell money(const Money& value) const;

 private:
  Cell number(const Rational& value, const std::string& unit, const std::string& after) const;
  Cell weight(FigureForm form, const Mass& value) const;

  const Worksheet& sheet_;
};

}  // namespace platewright::card
