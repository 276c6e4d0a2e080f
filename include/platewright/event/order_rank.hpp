// SPDX-License-Identifier: MIT
#pragma once
// Which of two orders is the better one to place.

#include <cstddef>

#include "platewright/event/order.hpp"

namespace platewright {

/// Whether goods come on no day that is known to be in time, or wait longer than they keep.
inline bool comes_at_a_wrong_time(const OrderLine& line) {
  if (line.deliver_by && !line.deliver_on) return true;
  return line.keeping.days && line.days_early() > *line.keeping.days;
}

/// The goods and their deliveries; of a delivery that does not meet its supplier's minimum, the
/// minimum, since the rest is paid for goods that no one needs. Deposits, which come back, do not
/// count.
inline Money cost_of_order(const Order& order) {
  Money out = order.total + order.delivery_charges;
  for (const SupplierOrder& supplier : order.suppliers) out += supplier.below_minimum;
  return out;
}

/// Goods in time come before goods that are cheap.
struct OrderRank {
  std::size_t wrong_times = 0;
  Money cost;

  friend bool operator<(const OrderRank& left, const OrderRank& right) {
    if (left.wrong_times != right.wrong_times) return left.wrong_times < right.wrong_times;
    return left.cost < right.cost;
  }
};

inline OrderRank rank_of(const Order& order) {
  OrderRank out{0, cost_of_order(order)};
  for (const SupplierOrder& supplier : order.suppliers) {
    for (const OrderLine& line : supplier.lines) {
      if (comes_at_a_wrong_time(line)) ++out.wrong_times;
    }
  }
  return out;
}

}  // namespace platewright
