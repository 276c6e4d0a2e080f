// SPDX-License-Identifier: MIT
#pragma once
// What a supplier is to bring, for whoever takes it in.

#include <vector>

#include "platewright/card/sheet.hpp"
#include "platewright/event/order.hpp"
#include "platewright/safety/safety_table.hpp"

namespace platewright {

/// A part for each supplier and day: what is ordered, in packs and by weight, with a blank for what
/// came and for the temperature of what is not dry; at which temperature chilled and frozen goods
/// are taken in, by the limits of `safety`; who took them in.
Sheet delivery_notes_sheet(const std::vector<Event>& events, const Order& order,
                           const SafetyTable& safety);

}  // namespace platewright
