// SPDX-License-Identifier: MIT
#pragma once
// Service charge, gratuity, taxes and total, on the sheet of the quote.

#include "workbook/quote_bill.hpp"

namespace platewright::pages {

/// Writes them below the bill's other rows, and below the total what of each sum is taxed at which
/// rate, where a sum is of several. Gives the place of the total.
CellPlace write_charges(const QuoteRows& rows, const Quote& quote, const TermPlaces& terms,
                        const BillPlaces& bill);

}  // namespace platewright::pages
