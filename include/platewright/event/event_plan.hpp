// SPDX-License-Identifier: MIT
#pragma once
// The one plan of an event, of which cards, cost, quote, order and timeline are views.

#include <memory>
#include <vector>

#include "platewright/event/make_timeline.hpp"
#include "platewright/event/occasion.hpp"
#include "platewright/problem/body.hpp"

namespace platewright {

/// What an event makes, from which offers, in which pieces, on whose prices: decided once, when it
/// is made. A copy is the same plan.
class EventPlan {
 public:
  /// Throws Failure as `plan_production` does.
  explicit EventPlan(Occasion occasion);

  const Occasion& occasion() const { return *occasion_; }
  const Event& event() const { return occasion_->event; }
  const RecipeBook& recipes() const { return occasion_->book; }
  /// The offer that counts stands first.
  const PriceList& prices() const { return occasion_->prices; }
  const Production& production() const { return production_; }

  /// Throws Failure as `event_cost` does.
  EventCost cost() const { return event_cost(event(), production_, recipes(), prices()); }
  /// Throws Failure as `quote_for` does.
  Quote quote() const { return quote_for(event(), cost(), prices()); }
  /// Throws Failure as `make_order` does.
  Order order() const { return make_order(event(), production_, recipes(), prices()); }
  /// Throws Failure as `make_timeline` does.
  Timeline timeline(const SafetyTable& safety) const;

 private:
  std::shared_ptr<const Occasion> occasion_;
  Production production_;  ///< refers to the occasion's recipes
};

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/event/bodies/event_plan.hpp"
#endif
