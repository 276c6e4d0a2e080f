// SPDX-License-Identifier: MIT
#pragma once
// An occasion with all that its price rests on, as one value that can be changed and asked again.

#include "platewright/event/event_cost.hpp"
#include "platewright/problem/body.hpp"

namespace platewright {

/// A copy of its own: a change to it changes nothing of the book that it came from.
struct Occasion {
  Event event;
  RecipeBook book;
  PriceList prices;
};

/// What its food and deliveries cost. Throws Failure as `plan_production` and `event_cost` do.
EventCost event_cost(const Occasion& occasion);

/// The quote from the very beginning: production, plate costs, price. Throws Failure as these do.
inline Quote quote_of(const Occasion& occasion) {
  return quote_for(occasion.event, event_cost(occasion), occasion.prices);
}

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/event/bodies/occasion.hpp"
#endif
