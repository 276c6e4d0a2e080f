// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/costing/delivery_cost.hpp.

#include "platewright/costing/delivery_cost.hpp"

namespace platewright {

PLATEWRIGHT_BODY Money cost_of_deliveries(const std::vector<DeliveryCost>& deliveries) {
  Money out;
  for (const DeliveryCost& supplier : deliveries) out += supplier.cost();
  return out;
}

}  // namespace platewright
