// SPDX-License-Identifier: MIT
#pragma once
// A quote, with every step from the food to the price of a guest.

#include <optional>
#include <string>
#include <vector>

#include "platewright/card/sheet.hpp"
#include "platewright/costing/quote.hpp"
#include "platewright/event/break_even.hpp"
#include "platewright/event/dish_notices.hpp"
#include "platewright/event/event.hpp"
#include "platewright/event/event_cost.hpp"
#include "platewright/event/invoice.hpp"

namespace platewright {

/// The caterer's sheet. The printed costs sum to the printed cost of the event. `break_even` is the
/// number of guests that `platewright::break_even` gives.
Sheet quote_sheet(const Event& event, const Quote& quote,
                  const std::optional<BreakEven>& break_even);

/// The client's sheet: menu, allergens, undercooked food, prices, charges, conditions and lines to
/// sign on. No cost and no margin stands on it. `notices` are those of the event's dishes.
Sheet client_quote_sheet(const Event& event, const Quote& quote,
                         const std::vector<DishNotice>& notices);

/// What is to be paid after the event: for whom, who came, the bill with its taxes, what was paid
/// and what is due. The event must have an invoice.
Sheet invoice_sheet(const Event& event, const Invoice& invoice);

/// Why one line or figure of the quote, or of the plate costs behind it, is what it is: its inputs
/// and its formula. A line is named as the sheets print it; break-even alone has no formula, since
/// every number of guests is planned anew. Throws Failure, with the nearest names, for a line that
/// is not there.
Sheet why_sheet(const Event& event, const EventCost& cost, const Quote& quote,
                const std::string& line, const PriceList& prices);

}  // namespace platewright
