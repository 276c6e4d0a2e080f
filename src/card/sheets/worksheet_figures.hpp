// SPDX-License-Identifier: MIT
#pragma once
// The figures of a worksheet, as a student writes them.

#include <optional>
#include <string>

#include "platewright/card/cell.hpp"
#include "platewright/worksheet/worksheet.hpp"

namespace platewright::card {

/// A weight in pounds and ounces, exact to 1/100 oz, or in kilograms to the gram.
Cell exact_weight_cell(const Mass& mass, WeighedIn weights);

/// How many decimals a step's answer was written with, in the unit that the sheet writes the step
/// in; 0 where it has none.
unsigned places_of(const Answer& answer, const WorkingStep& step, WeighedIn weights);

/// Writes the figures of one worksheet: its currency, its weights. `digits` are the decimals of a
/// price by weight, where the user asked for so many.
class FigureWriter {
 public:
  FigureWriter(const Worksheet& sheet, std::optional<unsigned> digits)
      : sheet_(sheet), digits_(digits) {}

  /// The figure of the step or term of that name, with at least so many decimals where it goes on.
  Cell cell(FigureForm form, const Figure& value, unsigned least_places = 0) const;
  /// `120.00 - 36.00 = 84.00`; the result with at least so many decimals where it goes on.
  std::string line(const WorkingStep& step, unsigned least_places = 0) const;
  /// `6.65`, below a heading that says what it is for.
  Cell price_in_column(const PricePerMass& value) const;

 private:
  Cell price(const PricePerMass& value, unsigned least_places) const;
  Cell number(const Rational& value, unsigned places, const std::string& unit,
              const std::string& after) const;
  Cell weight(FigureForm form, const Mass& value, unsigned least_places) const;
  unsigned money_places(const Rational& value, unsigned least_places) const;
  unsigned price_places(const Rational& value, unsigned least_places) const;

  const Worksheet& sheet_;
  std::optional<unsigned> digits_;
};

}  // namespace platewright::card
