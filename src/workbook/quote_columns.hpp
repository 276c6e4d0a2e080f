// SPDX-License-Identifier: MIT
#pragma once
// The columns of the sheet `Quote`.

#include "workbook/rounding_formulas.hpp"

namespace platewright::pages {

struct QuoteColumn {
  enum : unsigned { line, count, price, beside, of, exact, remainder, rounded, planned };
};

inline constexpr RoundedColumns quote_columns{QuoteColumn::exact, QuoteColumn::remainder,
                                              QuoteColumn::rounded};

}  // namespace platewright::pages
