// SPDX-License-Identifier: MIT
#pragma once
// The sheet of the quote, from the food to what is paid.

#include "platewright/event/event_plan.hpp"
#include "workbook/prices_page.hpp"

namespace platewright::pages {

/// The sheet `Quote`; `prices` have the places of its terms, `food` is that of the exact cost of
/// the food. Break-even is not on it: each number of guests is another plan.
void write_quote(Page& page, const EventPlan& plan, const Quote& quote, const PricePlaces& prices,
                 const CellPlace& food);

}  // namespace platewright::pages
