// SPDX-License-Identifier: MIT
#pragma once
// The sheet of what to buy, in whole packs and pieces.

#include "platewright/event/event_plan.hpp"
#include "workbook/prices_page.hpp"

namespace platewright::pages {

/// The sheet `Order`, a table for each supplier and the sums below them.
void write_order(Page& page, const EventPlan& plan, const Order& order, const PricePlaces& prices);

}  // namespace platewright::pages
