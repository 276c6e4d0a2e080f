// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/event/order_rank.hpp.

#include "platewright/event/order_rank.hpp"

namespace platewright {

PLATEWRIGHT_BODY bool comes_at_a_wrong_time(const OrderLine& line) {
  if (line.deliver_by && !line.deliver_on) return true;
  return line.keeping.days && line.days_early() > *line.keeping.days;
}

PLATEWRIGHT_BODY Money cost_of_order(const Order& order) {
  Money out = order.total + order.delivery_charges;
  for (const SupplierOrder& supplier : order.suppliers) out += supplier.below_minimum;
  return out;
}

PLATEWRIGHT_BODY OrderRank rank_of(const Order& order) {
  OrderRank out{0, cost_of_order(order)};
  for (const SupplierOrder& supplier : order.suppliers) {
    for (const OrderLine& line : supplier.lines) {
      if (comes_at_a_wrong_time(line)) ++out.wrong_times;
    }
  }
  return out;
}

}  // namespace platewright
