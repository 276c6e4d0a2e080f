#pragma once
// What the food of an occasion costs, and its quote.

#include <vector>

#include "platewright/costing/make_quote.hpp"
#include "platewright/event/needs.hpp"

namespace platewright {

/// The plate costs of all dishes, sub-recipes inside them by what they yield: what is used, not
/// what must be bought in whole packs.
struct EventCost {
  std::vector<PlateCost> dishes;  ///< in the order of the menu
  Money food;                     ///< the sum of their totals - what is saved
  /// What by-products of cuts save where another recipe uses them instead of buying.
  Money saved = {};
};

/// Throws Failure as `PlateCosting::cost` does.
inline EventCost event_cost(const Production& production, const RecipeBook& book,
                            const PriceList& prices) {
  PlateCosting costing(book, prices);
  EventCost out;
  for (const DishPlan& dish : production.dishes) {
    out.dishes.push_back(costing.cost(dish.scaled));
    out.food += out.dishes.back().total;
  }
  for (const Need& need : needs_of(production, book, prices)) {
    if (!need.from_by_products) continue;
    out.saved += price_of(*need.from_by_products, prices.find(need.ingredient)->purchases.front());
  }
  out.food -= out.saved;
  return out;
}

/// The guests of an occasion as they pay.
inline std::vector<PayingGuests> paying_guests(const Event& event) {
  std::vector<PayingGuests> out;
  for (const GuestKind& kind : event.guests) {
    out.push_back({kind.name, kind.count, kind.price_share, kind.own_price, kind.payer});
  }
  return out;
}

/// The food for a guest at the full price: food / (guests x price shares), where guests with a
/// price of their own count by what they eat. Throws Failure where no guest pays.
inline Money food_of_full_price(const Event& event, const EventCost& cost) {
  check_guests(paying_guests(event));
  Rational full_prices;
  for (const GuestKind& kind : event.guests) {
    full_prices += kind.count * (kind.own_price ? kind.portion_share : kind.price_share);
  }
  return cost.food / full_prices;
}

/// The quote for an occasion by its own terms. Throws Failure, at the event's place, as
/// `make_quote` does.
inline Quote quote_for(const Event& event, const EventCost& cost, const PriceList& prices) {
  try {
    return make_quote(cost.food, paying_guests(event), event.terms, prices.currency);
  } catch (const Failure& failure) {
    throw Failure(at(failure.problem(), event.place));
  }
}

}  // namespace platewright
