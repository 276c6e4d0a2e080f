#pragma once
// The sheet of the quote, from the food to what is paid.

#include "platewright/event/event_plan.hpp"
#include "workbook/prices_page.hpp"

namespace platewright::pages {

/// The sheet `Quote`; `food` is the place of the exact cost of the food. Break-even is not on it:
/// each number of guests is another plan. Of a quote with terms that it does not follow it says so
/// and holds nothing else.
void write_quote(Page& page, const EventPlan& plan, const Quote& quote, const TermPlaces& terms,
                 const CellPlace& food);

}  // namespace platewright::pages
