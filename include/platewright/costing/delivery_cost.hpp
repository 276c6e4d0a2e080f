// SPDX-License-Identifier: MIT
#pragma once
// What suppliers ask for bringing the goods of an event.

#include <cstdint>
#include <string>
#include <vector>

#include "platewright/problem/body.hpp"
#include "platewright/quantity/money.hpp"

namespace platewright {

/// What one supplier asks for its deliveries.
struct DeliveryCost {
  std::string supplier;
  std::int64_t deliveries = 0;  ///< how often it comes
  Money charge;                 ///< for each time
  Money cost() const { return charge * Rational(deliveries); }
};

/// Of all suppliers together.
Money cost_of_deliveries(const std::vector<DeliveryCost>& deliveries);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/costing/bodies/delivery_cost.hpp"
#endif
