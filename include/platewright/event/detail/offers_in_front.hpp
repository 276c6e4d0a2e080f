// SPDX-License-Identifier: MIT
#pragma once
// Which of an ingredient's offers stands in front.

#include <string>
#include <vector>

#include "platewright/costing/price_list.hpp"
#include "platewright/costing/same_offer.hpp"
#include "platewright/problem/body.hpp"

namespace platewright::detail {

/// Puts the offer in front, the others behind it in their order. False where it stands there
/// already, or the list does not have it.
bool put_in_front(const Purchase& offer, const std::string& ingredient, PriceList& prices);

/// The offers of an ingredient in any of the lists, as they are written.
std::vector<Purchase> offers_of(const std::string& ingredient,
                                const std::vector<PriceList*>& lists);

/// The offers of one ingredient as they are now, which come back when this goes.
class OffersBefore {
 public:
  OffersBefore(std::string ingredient, std::vector<PriceList*> lists);
  OffersBefore(const OffersBefore&) = delete;
  OffersBefore& operator=(const OffersBefore&) = delete;
  ~OffersBefore();

  /// They stay as they are put meanwhile.
  void keep() { kept_ = true; }

 private:
  std::string ingredient_;
  std::vector<PriceList*> lists_;
  std::vector<std::vector<Purchase>> before_;
  bool kept_ = false;
};

}  // namespace platewright::detail

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/event/bodies/detail/offers_in_front.hpp"
#endif
