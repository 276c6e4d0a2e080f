// SPDX-License-Identifier: MIT
#pragma once
// What an event costs as its food costs more or less: the formula, turned round, and its slope.

#include "platewright/costing/quote_terms.hpp"
#include "platewright/problem/body.hpp"

namespace platewright {

/// The cost of an event for a cost of its food, step by step.
struct EventCostParts {
  Money q_factor;     ///< food x Q factor
  Money overhead;     ///< share of food, Q factor and the rest, and the sum for the event
  Money contingency;  ///< share of all of these
  Money cost;         ///< all of it
};

/// cost = ((food x (1 + Q factor) + rest) x (1 + overhead) + overhead of the event) x
/// (1 + contingency). Every question about a quote's cost goes through here.
class CostOfFood {
 public:
  /// `rest` is labour, extras and deliveries.
  CostOfFood(const QuoteTerms& terms, Money rest);

  EventCostParts parts(const Money& food) const;

  /// The food with which the event costs `cost`; below 0 where the rest alone costs more.
  Money food_for(const Money& cost) const;

  /// By how much the event costs more for each unit of money that the food costs more.
  Rational slope() const { return (1 + q_factor_) * (1 + overhead_) * (1 + contingency_); }

 private:
  Rational q_factor_;
  Rational overhead_;
  Rational contingency_;
  Money overhead_of_event_;
  Money rest_;
};

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/costing/bodies/cost_of_food.hpp"
#endif
