// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/costing/cost_of_food.hpp.

#include <utility>

#include "platewright/costing/cost_of_food.hpp"

namespace platewright {

PLATEWRIGHT_BODY CostOfFood::CostOfFood(const QuoteTerms& terms, Money rest)
    : q_factor_(terms.q_factor),
      overhead_(terms.overhead),
      contingency_(terms.contingency),
      overhead_of_event_(terms.overhead_of_event),
      rest_(std::move(rest)) {}

PLATEWRIGHT_BODY EventCostParts CostOfFood::parts(const Money& food) const {
  EventCostParts out;
  out.q_factor = food * q_factor_;
  const Money direct = food + out.q_factor + rest_;
  out.overhead = direct * overhead_ + overhead_of_event_;
  out.contingency = (direct + out.overhead) * contingency_;
  out.cost = direct + out.overhead + out.contingency;
  return out;
}

PLATEWRIGHT_BODY Money CostOfFood::food_for(const Money& cost) const {
  const Money direct = (cost / (1 + contingency_) - overhead_of_event_) / (1 + overhead_);
  return (direct - rest_) / (1 + q_factor_);
}

}  // namespace platewright
