// SPDX-License-Identifier: MIT
#pragma once
// What the event costs, on the sheet of its quote.

#include "platewright/costing/quote.hpp"
#include "workbook/prices_page.hpp"

namespace platewright::pages {

/// What the rest of the quote follows from, exact.
struct QuoteCosts {
  CellPlace food;
  CellPlace q_factor;
  CellPlace cost;
};

/// Writes the table of costs. `guests` is
/// the place of the number of heads, `food` that of the cost of the food.
QuoteCosts write_quote_costs(Page& page, const Quote& quote, const PricePlaces& prices,
                             const CellPlace& guests, const CellPlace& food);

}  // namespace platewright::pages
