// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/event/occasion.hpp.

#include "platewright/event/occasion.hpp"

namespace platewright {

PLATEWRIGHT_BODY EventCost event_cost(const Occasion& occasion) {
  const Production production = plan_production(occasion.event, occasion.book, occasion.prices);
  return event_cost(occasion.event, production, occasion.book, occasion.prices);
}

}  // namespace platewright
