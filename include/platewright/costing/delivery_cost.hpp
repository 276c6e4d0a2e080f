// SPDX-License-Identifier: MIT
#pragma once
// What suppliers ask for bringing the goods of an event.

#include <cstdint>
#include <string>
#include <vector>

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
inline Money cost_of_deliveries(const std::vector<DeliveryCost>& deliveries) {
  Money out;
  for (const DeliveryCost& supplier : deliveries) out += supplier.cost();
  return out;
}

}  // namespace platewright
