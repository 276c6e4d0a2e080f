// SPDX-License-Identifier: MIT
#pragma once
// Which of two orders is the better one to place.

#include <cstddef>

#include "platewright/event/order.hpp"
#include "platewright/problem/body.hpp"

namespace platewright {

/// Whether goods come on no day that is known to be in time, or wait longer than they keep.
bool comes_at_a_wrong_time(const OrderLine& line);

/// The goods and their deliveries; of a delivery that does not meet its supplier's minimum, the
/// minimum, since the rest is paid for goods that no one needs. Deposits, which come back, do not
/// count.
Money cost_of_order(const Order& order);

/// Goods in time come before goods that are cheap.
struct OrderRank {
  std::size_t wrong_times = 0;
  Money cost;

  friend bool operator<(const OrderRank& left, const OrderRank& right) {
    if (left.wrong_times != right.wrong_times) return left.wrong_times < right.wrong_times;
    return left.cost < right.cost;
  }
};

OrderRank rank_of(const Order& order);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/event/bodies/order_rank.hpp"
#endif
