// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/costing/current_prices.hpp.

#include <cstddef>
#include <map>
#include <string>
#include <tuple>
#include <utility>

#include "platewright/costing/current_prices.hpp"

namespace platewright {

namespace detail {

/// Offers that may be the same have the same key.
using OfferKey = std::tuple<std::string, bool, Rational>;

PLATEWRIGHT_BODY OfferKey offer_key(const Purchase& purchase) {
  return {purchase.supplier, purchase.by_the_piece, purchase.content.canonical()};
}

/// Whether `other` counts instead of `known`, which stands before it.
PLATEWRIGHT_BODY bool is_newer(const Purchase& other, const Purchase& known) {
  return other.on && (!known.on || *other.on > *known.on);
}

/// Where the offers of a list stand in it.
class OfferIndex {
 public:
  /// The place of the same offer; nothing where the list has none.
  std::optional<std::size_t> find(const std::vector<Purchase>& list,
                                  const Purchase& purchase) const {
    const auto places = places_.find(offer_key(purchase));
    if (places == places_.end()) return std::nullopt;
    for (const std::size_t i : places->second) {
      if (same_offer(list[i], purchase)) return i;
    }
    return std::nullopt;
  }
  void add(const Purchase& purchase, std::size_t place) {
    places_[offer_key(purchase)].push_back(place);
  }

 private:
  std::map<OfferKey, std::vector<std::size_t>> places_;
};

/// Of every offer the newest price; `index` then knows where each stands.
PLATEWRIGHT_BODY std::vector<Purchase> newest_offers(
    const std::vector<Purchase>& history, const std::optional<std::chrono::local_days>& day,
    OfferIndex& index) {
  std::vector<Purchase> out;
  for (const Purchase& purchase : history) {
    if (day && purchase.on && *purchase.on > *day) continue;
    const auto known = index.find(out, purchase);
    if (!known) {
      index.add(purchase, out.size());
      out.push_back(purchase);
    } else if (is_newer(purchase, out[*known])) {
      out[*known] = purchase;
    }
  }
  return out;
}

PLATEWRIGHT_BODY std::optional<std::chrono::local_days> first_day(
    const std::vector<Purchase>& history) {
  std::optional<std::chrono::local_days> out;
  for (const Purchase& purchase : history) {
    if (purchase.on && (!out || *purchase.on < *out)) out = purchase.on;
  }
  return out;
}

}  // namespace detail

PLATEWRIGHT_BODY PriceList current_prices(PriceList history,
                                          const std::optional<std::chrono::local_days>& day) {
  for (auto& [name, entry] : history.entries) {
    detail::OfferIndex index;
    std::vector<Purchase> counting = detail::newest_offers(entry.purchases, day, index);
    if (counting.empty()) entry.first_price = detail::first_day(entry.purchases);
    entry.purchases = std::move(counting);
  }
  return history;
}

PLATEWRIGHT_BODY PriceList with_newest_first(PriceList history) {
  for (auto& [name, entry] : history.entries) {
    detail::OfferIndex index;
    std::vector<Purchase> ordered = detail::newest_offers(entry.purchases, std::nullopt, index);
    for (const Purchase& purchase : entry.purchases) {
      const auto newest = index.find(ordered, purchase);
      if (!newest || ordered[*newest].on != purchase.on) ordered.push_back(purchase);
    }
    entry.purchases = std::move(ordered);
  }
  return history;
}

PLATEWRIGHT_BODY PriceList with_unit_prices_rounded(PriceList prices) {
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
