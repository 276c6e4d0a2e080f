// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/event/guest_table.hpp.

#include "platewright/event/guest_table.hpp"

namespace platewright {

PLATEWRIGHT_BODY std::vector<GuestTableRow> guest_table(const Occasion& occasion,
                                                        const std::vector<Rational>& counts) {
  check_trials("a table of guests", counts.size(), size_of_plan(occasion));
  const Money quoted = quote_of(occasion).price;
  std::vector<GuestTableRow> out;
  for (const Rational& count : counts) {
    Event event = occasion.event;
    change_guests(event, count);
    const Production production = plan_production(event, occasion.book, occasion.prices);
    const EventCost cost = event_cost(event, production, occasion.book, occasion.prices);
    const Quote priced = quote_for(event, cost, occasion.prices);
    event.terms.agreed_price = quoted;
    out.push_back({count, priced, quote_for(event, cost, occasion.prices)});
  }
  return out;
}

}  // namespace platewright
