#pragma once
// The cheapest offer of each ingredient: by what must be bought, whole packs and whole pieces.

#include <algorithm>
#include <cstddef>
#include <utility>
#include <vector>

#include "platewright/event/order_of_day.hpp"

namespace platewright {

namespace detail {

/// Puts one offer of each of the needs in front, one ingredient after another: the one with which
/// `total_of` the whole list is least, the one in front now where two are equal. An offer for which
/// the total can't be worked out (its measure is not the recipes') is passed over.
template <class TotalOf>
PriceList cheapest_by(const std::vector<Need>& needs, PriceList prices, const TotalOf& total_of) {
  Money least = total_of(prices);
  for (const Need& need : needs) {
    const auto found = prices.entries.find(need.ingredient);
    if (found == prices.entries.end()) continue;
    std::vector<Purchase>& offers = found->second.purchases;
    const std::vector<Purchase> as_written = offers;
    std::vector<Purchase> best = as_written;
    for (std::size_t i = 1; i < as_written.size(); ++i) {
      offers = as_written;
      const auto in_front = offers.begin() + static_cast<std::ptrdiff_t>(i);
      std::rotate(offers.begin(), in_front, in_front + 1);
      try {
        const Money total = total_of(prices);
        if (total >= least) continue;
        least = total;
        best = offers;
      } catch (const Failure&) {
        continue;
      }
    }
    offers = std::move(best);
  }
  return prices;
}

}  // namespace detail

/// The list with the offer in front with which the order for these events comes to least: a small
/// pack may win over a large one that is cheaper by the pound. The order never costs more than by
/// the list as it is. Deposits, which come back, do not count, nor does what is left over. Throws
/// Failure as `order_of_day` does for the list as it is.
inline PriceList with_cheapest_offers(const std::vector<Event>& events, const RecipeBook& book,
                                      PriceList prices) {
  const std::vector<Need> needs = needs_of_all(events, book, prices);
  return detail::cheapest_by(needs, std::move(prices), [&](const PriceList& list) {
    return order_of_day(events, book, list).total;
  });
}

/// The same for one recipe that is scaled already, and all that is made for it.
inline PriceList with_cheapest_offers(const ScaledRecipe& scaled, const RecipeBook& book,
                                      PriceList prices) {
  const auto needed = [&](const PriceList& list) {
    return needs_of(plan_with_sub_recipes(scaled, book, list), book, list);
  };
  const std::vector<Need> needs = needed(prices);
  return detail::cheapest_by(needs, std::move(prices), [&](const PriceList& list) {
    return make_order(needed(list), list).total;
  });
}

}  // namespace platewright
