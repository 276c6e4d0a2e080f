// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/event/event_cost.hpp.

#include <algorithm>
#include <optional>

#include "platewright/event/event_cost.hpp"

namespace platewright {

PLATEWRIGHT_BODY bool any_delivery_charge(const PriceList& prices) {
  return std::any_of(prices.suppliers.begin(), prices.suppliers.end(), [](const auto& supplier) {
    return supplier.second.delivery_charge > Money();
  });
}

PLATEWRIGHT_BODY std::vector<DeliveryCost> delivery_costs(const Order& order) {
  std::vector<DeliveryCost> out;
  for (const SupplierOrder& supplier : order.suppliers) {
    if (supplier.delivery_charges == Money()) continue;
    out.push_back({supplier.supplier, static_cast<std::int64_t>(supplier.deliveries.size()),
                   supplier.terms.delivery_charge});
  }
  return out;
}

PLATEWRIGHT_BODY EventCost event_cost(const Event& event, const Production& production,
                                      const RecipeBook& book, const PriceList& prices) {
  PlateCosting costing(book, prices);
  EventCost out;
  for (const DishPlan& dish : production.dishes) {
    out.dishes.push_back(costing.cost(dish.scaled));
    out.food += out.dishes.back().total;
  }
  // On which day goods are used makes no difference where no delivery is charged for.
  const bool charged = any_delivery_charge(prices);
  const std::vector<Need> needs =
      needs_of(production, book, prices, charged ? event.at : std::nullopt);
  for (const Need& need : needs) {
    if (!need.from_by_products) continue;
    out.saved += price_of(*need.from_by_products, prices.find(need.ingredient)->purchases.front());
  }
  out.food -= out.saved;
  if (charged) out.deliveries = delivery_costs(make_order(needs, prices.suppliers));
  return out;
}

PLATEWRIGHT_BODY std::vector<PayingGuests> paying_guests(const Event& event) {
  std::vector<PayingGuests> out;
  for (const GuestKind& kind : event.guests) {
    out.push_back({kind.name, kind.count, kind.price_share, kind.own_price, kind.payer});
  }
  return out;
}

PLATEWRIGHT_BODY Money food_of_full_price(const Event& event, const EventCost& cost) {
  check_guests(paying_guests(event));
  Rational full_prices;
  for (const GuestKind& kind : event.guests) {
    full_prices += kind.count * (kind.own_price ? kind.portion_share : kind.price_share);
  }
  return cost.food / full_prices;
}

PLATEWRIGHT_BODY Quote quote_for(const Event& event, const EventCost& cost,
                                 const PriceList& prices) {
  try {
    return make_quote(cost.food, paying_guests(event), event.terms, prices.currency,
                      cost.deliveries);
  } catch (const Failure& failure) {
    throw Failure(at(failure.problem(), event.place));
  }
}

}  // namespace platewright
