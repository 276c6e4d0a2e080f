// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/event/cheaper_offers.hpp.

#include "platewright/event/cheaper_offers.hpp"

namespace platewright {

namespace detail {

PLATEWRIGHT_BODY bool any_choice(const std::vector<Occasion>& occasions) {
  for (const Occasion& occasion : occasions) {
    for (const auto& [name, entry] : occasion.prices.entries) {
      if (entry.purchases.size() > 1) return true;
    }
  }
  return false;
}

}  // namespace detail

PLATEWRIGHT_BODY CheaperOffers cheaper_offers(const std::vector<Occasion>& occasions) {
  CheaperOffers out;
  if (!detail::any_choice(occasions)) return out;
  const Order now = order_of_day(occasions);
  std::optional<CheapestOrder> cheapest;
  try {
    cheapest = cheapest_order(occasions);
  } catch (const Failure& failure) {
    if (failure.problem().id != problems::too_many_trials({}, {}, {}, {}).id) throw;
    out.too_many = true;
    return out;
  }
  const Money before = cost_of_order(now);
  if (before <= cheapest->cost) return out;
  out.saves = before - cheapest->cost;
  out.bound = cheapest->bound;
  for (std::size_t i = 0; i < occasions.size(); ++i) {
    for (const Need& need : needs_of_all({occasions[i]})) {
      if (!need.offer || !need.to_buy()) continue;
      const auto& offers = cheapest->occasions[i].prices.entries.at(need.ingredient).purchases;
      if (same_offer(*need.offer, offers.front())) continue;
      out.others.push_back({need.ingredient, *need.offer, offers.front()});
    }
  }
  return out;
}

}  // namespace platewright
