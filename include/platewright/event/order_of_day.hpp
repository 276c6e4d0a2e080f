// SPDX-License-Identifier: MIT
#pragma once
// One order for several events, so that open packs are shared.

#include <vector>

#include "platewright/costing/same_offer.hpp"
#include "platewright/event/occasion.hpp"
#include "platewright/event/order.hpp"
#include "platewright/problem/body.hpp"

namespace platewright {

/// The needs of several events added up, by name of the ingredient. Each event's go by its own
/// prices; those that are bought by one offer at one price are one need, which is first used when
/// the first of them uses it. What is in store is there once, for the earliest event first. Throws
/// Failure as `plan_production` and `needs_of` do, and for amounts in measures that do not mix.
std::vector<Need> needs_of_all(const std::vector<Occasion>& occasions);

/// What the lists say of each supplier: the earliest event's word, but of minimums and charges the
/// most, and the closed days of all.
Suppliers suppliers_of_all(const std::vector<Occasion>& occasions);

/// One order for all of them, each event on its own prices. Throws Failure as `needs_of_all` and
/// `make_order` do, and for prices in different currencies.
Order order_of_day(const std::vector<Occasion>& occasions);

/// One order for events that go by the same prices.
Order order_of_day(const std::vector<Event>& events, const RecipeBook& book,
                   const PriceList& prices);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/event/bodies/order_of_day.hpp"
#endif
