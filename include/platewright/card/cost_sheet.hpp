// SPDX-License-Identifier: MIT
#pragma once
// Plate cost, line by line.

#include <optional>
#include <vector>

#include "platewright/card/sheet.hpp"
#include "platewright/costing/cost_of_recipes.hpp"
#include "platewright/costing/plate_cost.hpp"
#include "platewright/costing/plate_price.hpp"
#include "platewright/event/event_cost.hpp"

namespace platewright {

/// One recipe's cost: what is used and bought, price, cost and share of every line; yield, cost
/// factor and edible-portion price of those that lose something; and, where it was asked, the food
/// against the price. Printed lines sum to the printed total, printed shares to 100 %
/// (largest-remainder method).
Sheet cost_sheet(const PlateCost& cost, const PriceList& prices,
                 const std::optional<PlatePrice>& price = std::nullopt);

/// What each of many recipes costs, a row for each; exact costs are each rounded once. What has no
/// price is named.
Sheet plate_costs_sheet(const std::vector<RecipeCost>& costs, const PriceList& prices);

/// The cost of an event's food, a part for each dish and the total.
Sheet event_cost_sheet(const Event& event, const EventCost& cost, const PriceList& prices,
                       const std::optional<PlatePrice>& price = std::nullopt);

/// Why one line is what it is, of a recipe or of all dishes of an event: its inputs and its
/// formula. Throws Failure, with the nearest names, for a line that is not there.
Sheet why_sheet(const PlateCost& cost, const std::string& line, const PriceList& prices);
Sheet why_sheet(const Event& event, const EventCost& cost, const std::string& line,
                const PriceList& prices);

}  // namespace platewright
