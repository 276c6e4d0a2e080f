// SPDX-License-Identifier: MIT
#pragma once
// Offers of the book that would make an order cheaper than those it goes by.

#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "platewright/event/cheapest_offers.hpp"
#include "platewright/problem/body.hpp"

namespace platewright {

/// Another offer for one of the goods.
struct OtherOffer {
  std::string ingredient;
  Purchase now;
  Purchase instead;
};

/// What the cheapest offers would save of an order.
struct CheaperOffers {
  std::vector<OtherOffer> others;  ///< none where nothing is saved
  Money saves;                     ///< of goods, minimums and deliveries together
  std::optional<Money> bound;      ///< see `CheapestOrder`
  bool too_many = false;           ///< more orders to compare than are made: none was
};

/// Compares the order with the one of the cheapest offers. Throws Failure as `order_of_day` does.
CheaperOffers cheaper_offers(const std::vector<Occasion>& occasions);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/event/bodies/cheaper_offers.hpp"
#endif
