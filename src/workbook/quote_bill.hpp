// SPDX-License-Identifier: MIT
#pragma once
// What is paid, on the sheet of the quote: from the guests' lines to the total.

#include <optional>
#include <string>
#include <vector>

#include "workbook/prices_page.hpp"
#include "workbook/quote_rows.hpp"

namespace platewright::pages {

/// The rows of the guests, written first, so that costs and bill can name them.
struct GuestPlaces {
  std::vector<CellPlace> counts;
  std::vector<CellPlace> price_shares;
  std::optional<CellPlace> missing;
  CellPlace guests;
  CellPlace full_prices;
  std::optional<CellPlace> own_prices;  ///< what those with a price of their own pay together
};

/// An extra on the bill with what is off it, the cells of both.
struct BilledPlaces {
  CellPlace cost;
  std::vector<CellPlace> off;  ///< less than 0
};

struct BillPlaces {
  CellPlace subtotal;
  std::vector<BilledPlaces> billed;
  CellPlace total;
};

/// Writes the bill for the full price at `price`.
BillPlaces write_bill(const QuoteRows& rows, const Quote& quote, const TermPlaces& terms,
                      const GuestPlaces& guests, const CellPlace& price);

/// `1-B1*B2/(1+B2)`: what is left of a sum without the tax that is in it.
std::string without_tax_formula(const QuoteRows& rows, const Taxed& taxed, const TermPlaces& terms);

}  // namespace platewright::pages
