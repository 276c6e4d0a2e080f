// SPDX-License-Identifier: MIT
#pragma once
// The part of an order that goes to one supplier.

#include <algorithm>
#include <string>
#include <utility>

#include "platewright/event/order.hpp"
#include "platewright/problem/body.hpp"
#include "platewright/problem/catalogue/books.hpp"

namespace platewright {

/// What is ordered from this supplier, and its sums. Throws Failure where nothing is.
Order order_from(const std::string& supplier, const Order& order);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/event/bodies/order_from.hpp"
#endif
