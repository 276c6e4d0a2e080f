// SPDX-License-Identifier: MIT
#pragma once
// What would do where an order can't be had as it is planned.

#include <optional>
#include <string>
#include <vector>

#include "platewright/costing/price_list.hpp"
#include "platewright/event/order.hpp"
#include "platewright/problem/body.hpp"

namespace platewright {

/// The other suppliers in the book that can have the goods of a line there in time, each once, in
/// the order of their offers. The line knows the day by which they have to be there.
std::vector<std::string> suppliers_in_time(const OrderLine& line, const PriceList& prices,
                                           const std::optional<LocalTime>& ordered);

/// More of what is ordered from a supplier already.
struct MorePacks {
  const OrderLine* line;  ///< of the order asked about, which must live longer
  Integer packs;
  Money cost;
};

/// The least that fills a delivery of this order up to its minimum by more of one of its lines;
/// nothing where none has a price.
std::optional<MorePacks> packs_to_minimum(const SupplierOrder& order, const Delivery& delivery);

/// Goods of the order that are bought elsewhere, and that this supplier offers too.
std::vector<std::string> goods_to_move(const SupplierOrder& to, const Order& order,
                                       const PriceList& prices);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/event/bodies/order_remedies.hpp"
#endif
