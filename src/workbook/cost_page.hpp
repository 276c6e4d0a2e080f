// SPDX-License-Identifier: MIT
#pragma once
// The sheet on which the dishes are costed, line by line.

#include <vector>

#include "platewright/event/event_plan.hpp"
#include "workbook/prices_page.hpp"

namespace platewright::pages {

/// What an event costs, with one batch of each recipe that others use, every one before its users.
struct CostedEvent {
  EventCost cost;
  std::vector<PlateCost> batches;
  std::vector<Need> needs;
};

/// Throws Failure as `event_cost` does.
CostedEvent costed(const EventPlan& plan);

/// The sheet `Cost`. Gives the place of the exact cost of the food.
CellPlace write_costs(Page& page, const EventPlan& plan, const CostedEvent& costed,
                      const PricePlaces& prices);

}  // namespace platewright::pages
