// SPDX-License-Identifier: MIT
#pragma once
// What is needed of a line of an order, and what is left, as whoever buys reads it.

#include <string>
#include <utility>

#include "platewright/card/cell.hpp"
#include "platewright/event/order.hpp"

namespace platewright::card {

/// `2 × 10 lb`, `4 × about 7.5 lb`.
std::string packs_text(const OrderLine& line);

/// Both in one unit. Whole things (eggs, bunches, cans) in whole numbers, what is needed rounded up
/// and what is left down; other goods as decimals, a large delivery in the next larger unit (lb for
/// oz, kg for g, qt for fl oz, L for mL). The exact values stay exact.
std::pair<Cell, Cell> needed_and_left(const OrderLine& line);

}  // namespace platewright::card
