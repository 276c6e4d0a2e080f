#pragma once
// Plate cost, line by line.

#include <vector>

#include "platewright/card/sheet.hpp"
#include "platewright/costing/plate_cost.hpp"
#include "platewright/event/event_cost.hpp"

namespace platewright {

/// One recipe's cost: as-purchased price, yield, edible-portion price and cost of every line. The
/// printed lines sum to the printed total (largest-remainder method).
Sheet cost_sheet(const PlateCost& cost, const PriceList& prices);

/// The cost of an event's food, a part for each dish and the total.
Sheet event_cost_sheet(const Event& event, const EventCost& cost, const PriceList& prices);

}  // namespace platewright
