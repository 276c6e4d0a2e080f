// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/event/cheapest_offers.hpp.

#include <set>
#include <string>

#include "platewright/event/cheapest_offers.hpp"

namespace platewright {

namespace detail {

/// Of one ingredient's offers, puts the one in front in all the lists with which the total is
/// least, the one in front now where two are equal. One for which the total can't be worked out
/// (its measure is not the recipes') is passed over.
template <class TotalOf, class Total>
void take_cheapest(const std::string& ingredient, const std::vector<PriceList*>& lists,
                   const TotalOf& total_of, Total& least) {
  for (const Purchase& offer : offers_of(ingredient, lists)) {
    OffersBefore before(ingredient, lists);
    bool moved = false;
    for (PriceList* list : lists) moved = put_in_front(offer, ingredient, *list) || moved;
    if (!moved) continue;
    try {
      const Total total = total_of();
      if (!(total < least)) continue;
      least = total;
      before.keep();
    } catch (const Failure&) {
      continue;
    }
  }
}

/// One ingredient after another: first for all lists together, then for each of several alone.
template <class TotalOf>
void cheapest_by(const std::vector<Need>& needs, const std::vector<PriceList*>& lists,
                 const TotalOf& total_of) {
  auto least = total_of();
  std::set<std::string> seen;
  for (const Need& need : needs) {
    if (!seen.insert(need.ingredient).second) continue;
    take_cheapest(need.ingredient, lists, total_of, least);
    for (std::size_t i = 0; i < lists.size() && lists.size() > 1; ++i) {
      take_cheapest(need.ingredient, {lists[i]}, total_of, least);
    }
  }
}

/// Puts the offers in front with which goods are assigned to suppliers at the least cost, where the
/// whole order is better for it; `cost` is then its own. Gives what no assignment costs less than,
/// where the search stopped early.
PLATEWRIGHT_BODY std::optional<Money> assign_suppliers(std::vector<Occasion>& occasions,
                                                       Money& cost) {
  WaysToBuy ways(occasions);
  if (!ways.any_charges()) return std::nullopt;
  const OrderRank before = rank_of(order_of_day(occasions));
  ways.find();
  const Assignment least = ways.least();
  std::vector<PriceList> lists;
  for (const Occasion& occasion : occasions) lists.push_back(occasion.prices);
  ways.put_in_front(least);
  const OrderRank after = rank_of(order_of_day(occasions));
  if (after < before) {
    cost = after.cost;
  } else {
    for (std::size_t i = 0; i < lists.size(); ++i) occasions[i].prices = std::move(lists[i]);
  }
  return least.complete() ? std::nullopt : std::optional(least.bound);
}

/// How many orders are made to find the cheapest offers.
PLATEWRIGHT_BODY std::size_t trials_of(const std::vector<Need>& needs, const PriceList& prices) {
  std::size_t out = 0;
  for (const Need& need : needs) {
    const PriceEntry* entry = prices.find(need.ingredient);
    if (entry != nullptr && entry->purchases.size() > 1) out += entry->purchases.size() - 1;
  }
  return out;
}

}  // namespace detail

PLATEWRIGHT_BODY CheapestOrder cheapest_order(std::vector<Occasion> occasions) {
  const std::vector<Need> needs = needs_of_all(occasions);
  std::vector<PriceList*> lists;
  std::size_t size = 0;
  std::size_t trials = 0;
  for (Occasion& occasion : occasions) {
    lists.push_back(&occasion.prices);
    size += size_of_plan(occasion);
    trials += detail::trials_of(needs, occasion.prices) * (occasions.size() > 1 ? 2 : 1);
  }
  check_trials("the cheapest offers", trials, size);
  const auto rank = [&] { return rank_of(order_of_day(occasions)); };
  detail::cheapest_by(needs, lists, rank);
  CheapestOrder out{{}, rank().cost, std::nullopt};
  if (trials > 0) out.bound = detail::assign_suppliers(occasions, out.cost);
  out.occasions = std::move(occasions);
  return out;
}

PLATEWRIGHT_BODY PriceList with_cheapest_offers(const ScaledRecipe& scaled, const RecipeBook& book,
                                                PriceList prices) {
  const auto needed = [&] {
    return needs_of(plan_with_sub_recipes(scaled, book, prices), book, prices);
  };
  const std::vector<Need> needs = needed();
  check_trials("the cheapest offers", detail::trials_of(needs, prices),
               size_of_plan(Event(), plan_with_sub_recipes(scaled, book, prices)));
  detail::cheapest_by(needs, {&prices},
                      [&] { return make_order(needed(), prices.suppliers).total; });
  return prices;
}

}  // namespace platewright
