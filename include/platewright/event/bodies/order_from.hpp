// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/event/order_from.hpp.

#include <vector>

#include "platewright/event/order_from.hpp"

namespace platewright {

PLATEWRIGHT_BODY Order order_from(const std::string& supplier, const Order& order) {
  Order out;
  std::vector<std::string> known;
  for (const SupplierOrder& one : order.suppliers) {
    known.push_back(one.supplier);
    if (one.supplier != supplier) continue;
    out.suppliers = {one};
    out.total = one.total;
    out.deposit = one.deposit;
    out.delivery_charges = one.delivery_charges;
    for (const OrderLine& line : one.lines) out.left_over_value += line.left_over_value;
  }
  if (out.suppliers.empty()) {
    throw Failure(problems::name_unknown("supplier of this order", supplier, known,
                                         "name one from whom something is ordered"));
  }
  out.used_value = out.total - out.left_over_value;
  return out;
}

}  // namespace platewright
