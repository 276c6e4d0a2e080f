// SPDX-License-Identifier: MIT
#pragma once
// Of an order what concerns its deliveries: days, waiting goods, whom to ring, what to settle.

#include <optional>
#include <string>
#include <vector>

#include "platewright/card/blocks.hpp"
#include "platewright/costing/price_list.hpp"
#include "platewright/event/order.hpp"

namespace platewright::card {

/// `order by Tue 2027-10-05 14:00`, or nothing.
std::string order_by_text(const SupplierOrder& order);

/// `there on Fri 2027-10-08` where the supplier has days, else `there by`.
std::string delivery_text(const SupplierOrder& order, const LocalTime& day);

/// Where to send the order, and what is asked of it; nothing where the book does not say.
std::vector<std::string> contact_lines(const SupplierOrder& order);

/// `In the cold room from Tue 2027-10-05: lamb leg, 3 days.`, for all that comes before its day.
std::vector<std::string> waiting_notes(const SupplierOrder& order);

/// What of the order can't be had as it is planned, with what would do; empty where there is none.
/// `ordered`: when the order is given, if that is known.
Box order_box(const Order& order, const PriceList& prices, const std::optional<LocalTime>& ordered);

}  // namespace platewright::card
