// SPDX-License-Identifier: MIT
#pragma once
// The cheapest offer of each ingredient: by what must be bought, whole packs and whole pieces.

#include <optional>
#include <utility>
#include <vector>

#include "platewright/event/detail/offers_in_front.hpp"
#include "platewright/event/detail/ways_to_buy.hpp"
#include "platewright/event/order_of_day.hpp"
#include "platewright/event/trial_bound.hpp"
#include "platewright/problem/body.hpp"

namespace platewright {

/// The occasions with the offers in front that were found, and what their order then costs
/// (`cost_of_order`).
struct CheapestOrder {
  std::vector<Occasion> occasions;
  Money cost;
  /// Where the search for suppliers stopped early: what no choice of offers costs less than.
  std::optional<Money> bound;
};

/// The offers with which the order for all occasions costs least, minimums and deliveries with it,
/// each by the prices of its own day: a small pack may win over a large one that is cheaper by the
/// pound. Goods that come in time win over those that do not. Where suppliers have minimums or
/// charge deliveries, the assignment of goods to suppliers is searched (`least_assignment`), what
/// an offer changes of other goods (pieces of another weight, by-products) left out; it is taken
/// where the whole order is then better. Never worse than the lists as they are. Throws Failure as
/// `order_of_day` does for the lists as they are, and for more than `most_trials`.
CheapestOrder cheapest_order(std::vector<Occasion> occasions);

/// Its occasions.
inline std::vector<Occasion> with_cheapest_offers(std::vector<Occasion> occasions) {
  return cheapest_order(std::move(occasions)).occasions;
}

/// The same for one recipe that is scaled already, and all that is made for it.
PriceList with_cheapest_offers(const ScaledRecipe& scaled, const RecipeBook& book,
                               PriceList prices);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/event/bodies/cheapest_offers.hpp"
#endif
