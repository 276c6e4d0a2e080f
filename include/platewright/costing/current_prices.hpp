#pragma once
// Which of many offers counts by day, and with a unit price rounded or not.

#include <algorithm>
#include <chrono>
#include <optional>
#include <utility>
#include <vector>

#include "platewright/costing/price_list.hpp"
#include "platewright/costing/round_money.hpp"
#include "platewright/costing/same_offer.hpp"
#include "platewright/costing/unit_price.hpp"

namespace platewright {

namespace detail {

/// Whether `other` counts instead of `known`, which stands before it.
inline bool is_newer(const Purchase& other, const Purchase& known) {
  return other.on && (!known.on || *other.on > *known.on);
}

inline std::vector<Purchase> newest_offers(const std::vector<Purchase>& history,
                                           const std::optional<std::chrono::local_days>& day) {
  std::vector<Purchase> out;
  for (const Purchase& purchase : history) {
    if (day && purchase.on && *purchase.on > *day) continue;
    const auto known = std::find_if(
        out.begin(), out.end(), [&](const Purchase& offer) { return same_offer(offer, purchase); });
    if (known == out.end()) {
      out.push_back(purchase);
    } else if (is_newer(purchase, *known)) {
      *known = purchase;
    }
  }
  return out;
}

/// Nothing where there is no offer.
inline std::optional<std::chrono::local_days> first_day(const std::vector<Purchase>& history) {
  std::optional<std::chrono::local_days> out;
  for (const Purchase& purchase : history) {
    if (purchase.on && (!out || *purchase.on < *out)) out = purchase.on;
  }
  return out;
}

}  // namespace detail

/// The price list of one day: of every offer (one supplier, one pack) the newest price on or before
/// it, the newest of all where no day is given. They stay in the order of the book. An ingredient
/// all of whose prices are later has none left, and keeps the day of the first.
inline PriceList current_prices(PriceList history,
                                const std::optional<std::chrono::local_days>& day) {
  for (auto& [name, entry] : history.entries) {
    std::vector<Purchase> counting = detail::newest_offers(entry.purchases, day);
    if (counting.empty()) entry.first_price = detail::first_day(entry.purchases);
    entry.purchases = std::move(counting);
  }
  return history;
}

/// The whole history with the newest price of every offer in front, for whoever asks about no day.
inline PriceList with_newest_first(PriceList history) {
  for (auto& [name, entry] : history.entries) {
    std::vector<Purchase> ordered = detail::newest_offers(entry.purchases, std::nullopt);
    for (const Purchase& purchase : entry.purchases) {
      const bool there = std::any_of(ordered.begin(), ordered.end(), [&](const Purchase& newest) {
        return same_offer(newest, purchase) && newest.on == purchase.on;
      });
      if (!there) ordered.push_back(purchase);
    }
    entry.purchases = std::move(ordered);
  }
  return history;
}

/// The same list with the price of every unit (a pound, a piece) rounded half up to the minor unit
/// before anything is multiplied by it, as some printed sheets do. Not exact: only for whoever has
/// to agree with such a sheet.
inline PriceList with_unit_prices_rounded(PriceList prices) {
  const Money minor = minor_unit(prices.currency);
  for (auto& [name, entry] : prices.entries) {
    for (Purchase& purchase : entry.purchases) {
      const UnitPrice exact = unit_price(purchase);
      purchase.price = round_money(exact.price, minor, Rounding::half_up) *
                       in_unit(purchase.content, exact.unit).number;
    }
  }
  return prices;
}

}  // namespace platewright
