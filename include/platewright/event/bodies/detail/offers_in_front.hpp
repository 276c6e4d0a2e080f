// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/event/detail/offers_in_front.hpp.

#include <algorithm>
#include <utility>

#include "platewright/event/detail/offers_in_front.hpp"

namespace platewright::detail {

PLATEWRIGHT_BODY bool put_in_front(const Purchase& offer, const std::string& ingredient,
                                   PriceList& prices) {
  const auto entry = prices.entries.find(ingredient);
  if (entry == prices.entries.end()) return false;
  std::vector<Purchase>& offers = entry->second.purchases;
  const auto found = std::find_if(offers.begin(), offers.end(),
                                  [&](const Purchase& other) { return same_offer(other, offer); });
  if (found == offers.end() || found == offers.begin()) return false;
  std::rotate(offers.begin(), found, found + 1);
  return true;
}

PLATEWRIGHT_BODY std::vector<Purchase> offers_of(const std::string& ingredient,
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

PLATEWRIGHT_BODY OffersBefore::OffersBefore(std::string ingredient, std::vector<PriceList*> lists)
    : ingredient_(std::move(ingredient)), lists_(std::move(lists)) {
  for (const PriceList* list : lists_) {
    const PriceEntry* entry = list->find(ingredient_);
    before_.push_back(entry == nullptr ? std::vector<Purchase>() : entry->purchases);
  }
}

PLATEWRIGHT_BODY OffersBefore::~OffersBefore() {
  for (std::size_t i = 0; i < lists_.size() && !kept_; ++i) {
    if (!before_[i].empty()) lists_[i]->entries[ingredient_].purchases = std::move(before_[i]);
  }
}

}  // namespace platewright::detail
