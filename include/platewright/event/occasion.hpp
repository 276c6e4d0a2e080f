// SPDX-License-Identifier: MIT
#pragma once
// An occasion with all that its price rests on, as one value that can be changed and asked again.

#include "platewright/event/event_cost.hpp"

namespace platewright {

/// A copy of its own: a change to it changes nothing of the book that it came from.
struct Occasion {
  Event event;
  RecipeBook book;
  PriceList prices;
};

/// What its food and deliveries cost. Throws Failure as `plan_production` and `event_cost` do.
inline EventCost event_cost(const Occasion& occasion) {
  const Production production = plan_production(occasion.event, occasion.book, occasion.prices);
  return event_cost(occasion.event, production, occasion.book, occasion.prices);
}

/// The quote from the very beginning: production, plate costs, price. Throws Failure as these do.
inline Quote quote_of(const Occasion& occasion) {
  return quote_for(occasion.event, event_cost(occasion), occasion.prices);
}

}  // namespace platewright
