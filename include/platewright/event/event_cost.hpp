// SPDX-License-Identifier: MIT
#pragma once
// What the food of an occasion costs, what its deliveries do, and its quote.

#include <vector>

#include "platewright/costing/make_quote.hpp"
#include "platewright/event/order.hpp"
#include "platewright/problem/body.hpp"

namespace platewright {

/// The plate costs of all dishes, sub-recipes inside them by what they yield: what is used, not
/// what must be bought in whole packs.
struct EventCost {
  std::vector<PlateCost> dishes;  ///< in the order of the menu
  Money food;                     ///< the sum of their totals - what is saved
  /// What by-products of cuts save where another recipe uses them instead of buying.
  Money saved = {};
  /// What suppliers ask for bringing the order of this event alone; those who ask for nothing are
  /// left out.
  std::vector<DeliveryCost> deliveries = {};
};

/// Whether a supplier of these prices asks for its deliveries.
bool any_delivery_charge(const PriceList& prices);

/// What is charged for the deliveries of an order.
std::vector<DeliveryCost> delivery_costs(const Order& order);

/// Throws Failure as `PlateCosting::cost` does, and where a delivery is charged for, as
/// `make_order` does.
EventCost event_cost(const Event& event, const Production& production, const RecipeBook& book,
                     const PriceList& prices);

/// The guests of an occasion as they pay.
std::vector<PayingGuests> paying_guests(const Event& event);

/// The food for a guest at the full price: food / (guests x price shares), where guests with a
/// price of their own count by what they eat. Throws Failure where no guest pays.
Money food_of_full_price(const Event& event, const EventCost& cost);

/// The quote for an occasion by its own terms, deliveries in its cost. Throws Failure, at the
/// event's place, as `make_quote` does.
Quote quote_for(const Event& event, const EventCost& cost, const PriceList& prices);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/event/bodies/event_cost.hpp"
#endif
