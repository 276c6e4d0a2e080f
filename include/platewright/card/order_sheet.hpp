// SPDX-License-Identifier: MIT
#pragma once
// What to buy, by supplier.

#include <optional>
#include <vector>

#include "platewright/card/sheet.hpp"
#include "platewright/costing/price_list.hpp"
#include "platewright/event/cheaper_offers.hpp"
#include "platewright/event/order.hpp"

namespace platewright {

/// A list to shop from: packs and whole pieces, what they hold, what is needed, what is left over,
/// when and where to order it, and what can't be had as planned (`order_warnings`). `ordered`: when
/// the order is given, if that is known.
Sheet order_sheet(const Event& event, const Order& order, const PriceList& prices,
                  const std::optional<LocalTime>& ordered = std::nullopt);

/// The same for several events that are bought for together.
Sheet order_sheet(const std::vector<Event>& events, const Order& order, const PriceList& prices,
                  const std::optional<LocalTime>& ordered = std::nullopt);

/// Which other offers would make the order cheaper, and by how much; no lines where none would.
Box cheaper_offers_box(const CheaperOffers& cheaper, const PriceList& prices);

}  // namespace platewright
