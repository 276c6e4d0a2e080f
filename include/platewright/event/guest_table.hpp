// SPDX-License-Identifier: MIT
#pragma once
// The price of a guest at several numbers of guests, and what each leaves at the price quoted.

#include <vector>

#include "platewright/event/changes.hpp"
#include "platewright/event/trial_bound.hpp"

namespace platewright {

/// The whole quote at one number of guests of the same mix.
struct GuestTableRow {
  Rational guests;
  Quote quote;      ///< priced for so many
  Quote turned_up;  ///< so many come, at the price that is quoted for the number expected
};

/// One row for each number, in the order given; everything is planned anew, since whole pieces and
/// workers do not follow the guests in proportion. Throws Failure as `change_guests` and
/// `quote_of`, and for more rows than `most_trials`.
inline std::vector<GuestTableRow> guest_table(const Occasion& occasion,
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
