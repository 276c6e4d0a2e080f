#pragma once
// What to buy, by supplier.

#include <vector>

#include "platewright/card/sheet.hpp"
#include "platewright/costing/price_list.hpp"
#include "platewright/event/order.hpp"

namespace platewright {

/// A list to shop from: packs and whole pieces, what they hold, what is needed, what is left over.
Sheet order_sheet(const Event& event, const Order& order, const PriceList& prices);

/// The same for several events that are bought for together.
Sheet order_sheet(const std::vector<Event>& events, const Order& order, const PriceList& prices);

}  // namespace platewright
