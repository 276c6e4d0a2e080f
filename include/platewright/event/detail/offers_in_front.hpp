// SPDX-License-Identifier: MIT
#pragma once
// Which of an ingredient's offers stands in front.

#include <algorithm>
#include <string>
#include <utility>
#include <vector>

#include "platewright/costing/price_list.hpp"
#include "platewright/costing/same_offer.hpp"

namespace platewright::detail {

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

/// The offers of one ingredient as they are now, which come back when this goes.
class OffersBefore {
 public:
  OffersBefore(std::string ingredient, std::vector<PriceList*> lists)
      : ingredient_(std::move(ingredient)), lists_(std::move(lists)) {
    for (const PriceList* list : lists_) {
      const PriceEntry* entry = list->find(ingredient_);
      before_.push_back(entry == nullptr ? std::vector<Purchase>() : entry->purchases);
    }
  }
  OffersBefore(const OffersBefore&) = delete;
  OffersBefore& operator=(const OffersBefore&) = delete;
  ~OffersBefore() {
    for (std::size_t i = 0; i < lists_.size() && !kept_; ++i) {
      if (!before_[i].empty()) lists_[i]->entries[ingredient_].purchases = std::move(before_[i]);
    }
  }

  /// They stay as they are put meanwhile.
  void keep() { kept_ = true; }

 private:
  std::string ingredient_;
  std::vector<PriceList*> lists_;
  std::vector<std::vector<Purchase>> before_;
  bool kept_ = false;
};

}  // namespace platewright::detail
