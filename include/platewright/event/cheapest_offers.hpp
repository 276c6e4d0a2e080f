#pragma once
// The cheapest offer of each ingredient: by what must be bought, whole packs and whole pieces.

#include <algorithm>
#include <set>
#include <string>
#include <utility>
#include <vector>

#include "platewright/event/order_of_day.hpp"
#include "platewright/event/trial_bound.hpp"

namespace platewright {

namespace detail {

/// Puts the offer in front, the others behind it in their order. False where it stands there
/// already, or the list does not have it.
inline bool put_in_front(const Purchase& offer, const std::string& ingredient, PriceList& prices) {
  const auto entry = prices.entries.find(ingredient);
  if (entry == prices.entries.end()) return false;
  std::vector<Purchase>& offers = entry->second.purchases;
  const auto found = std::find_if(offers.begin(), offers.end(),
                                  [&](const Purchase& other) { return same_offer(other, offer); });
  if (found == offers.end() || found == offers.begin()) return false;
  std::rotate(offers.begin(), found, found + 1);
  return true;
}

/// The offers of an ingredient in any of the lists, as they are written.
inline std::vector<Purchase> offers_of(const std::string& ingredient,
                                       const std::vector<PriceList*>& lists) {
  std::vector<Purchase> out;
  for (const PriceList* list : lists) {
    const PriceEntry* entry = list->find(ingredient);
    if (entry == nullptr) continue;
    for (const Purchase& offer : entry->purchases) {
      if (std::none_of(out.begin(), out.end(),
                       [&](const Purchase& known) { return same_offer(known, offer); })) {
        out.push_back(offer);
      }
    }
  }
  return out;
}

/// Of one ingredient's offers, puts the one in front in all the lists with which the total is
/// least, the one in front now where two are equal. One for which the total can't be worked out
/// (its measure is not the recipes') is passed over.
template <class TotalOf>
void take_cheapest(const std::string& ingredient, const std::vector<PriceList*>& lists,
                   const TotalOf& total_of, Money& least) {
  for (const Purchase& offer : offers_of(ingredient, lists)) {
    std::vector<std::vector<Purchase>> before;
    bool moved = false;
    for (PriceList* list : lists) {
      const PriceEntry* entry = list->find(ingredient);
      before.push_back(entry == nullptr ? std::vector<Purchase>() : entry->purchases);
      moved = put_in_front(offer, ingredient, *list) || moved;
    }
    if (!moved) continue;
    bool better = false;
    try {
      const Money total = total_of();
      better = total < least;
      if (better) least = total;
    } catch (const Failure&) {
      better = false;
    }
    for (std::size_t i = 0; i < lists.size() && !better; ++i) {
      if (!before[i].empty()) lists[i]->entries[ingredient].purchases = std::move(before[i]);
    }
  }
}

/// One ingredient after another: first for all lists together, then for each of several alone.
template <class TotalOf>
void cheapest_by(const std::vector<Need>& needs, const std::vector<PriceList*>& lists,
                 const TotalOf& total_of) {
  Money least = total_of();
  std::set<std::string> seen;
  for (const Need& need : needs) {
    if (!seen.insert(need.ingredient).second) continue;
    take_cheapest(need.ingredient, lists, total_of, least);
    for (std::size_t i = 0; i < lists.size() && lists.size() > 1; ++i) {
      take_cheapest(need.ingredient, {lists[i]}, total_of, least);
    }
  }
}

/// How many orders are made to find the cheapest offers.
inline std::size_t trials_of(const std::vector<Need>& needs, const PriceList& prices) {
  std::size_t out = 0;
  for (const Need& need : needs) {
    const PriceEntry* entry = prices.find(need.ingredient);
    if (entry != nullptr && entry->purchases.size() > 1) out += entry->purchases.size() - 1;
  }
  return out;
}

}  // namespace detail

/// The occasions with the offer in front with which the order for all of them comes to least, each
/// by the prices of its own day: a small pack may win over a large one that is cheaper by the
/// pound. The order never costs more than by the lists as they are. Deposits, which come back, do
/// not count, nor does what is left over. Throws Failure as `order_of_day` does for the lists as
/// they are, and for more than `most_trials`.
inline std::vector<Occasion> with_cheapest_offers(std::vector<Occasion> occasions) {
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
  detail::cheapest_by(needs, lists, [&] { return order_of_day(occasions).total; });
  return occasions;
}

/// The same for one recipe that is scaled already, and all that is made for it.
inline PriceList with_cheapest_offers(const ScaledRecipe& scaled, const RecipeBook& book,
                                      PriceList prices) {
  const auto needed = [&] {
    return needs_of(plan_with_sub_recipes(scaled, book, prices), book, prices);
  };
  const std::vector<Need> needs = needed();
  check_trials("the cheapest offers", detail::trials_of(needs, prices),
               size_of_plan(Event(), plan_with_sub_recipes(scaled, book, prices)));
  detail::cheapest_by(needs, {&prices},
                      [&] { return make_order(needed(), prices.minimum_orders).total; });
  return prices;
}

}  // namespace platewright
