// SPDX-License-Identifier: MIT
#pragma once
// How sure a weight to buy makes the kitchen.

#include "platewright/card/kitchen_view.hpp"
#include "platewright/card/sheet.hpp"
#include "platewright/yield/yield_answer.hpp"

namespace platewright::card {

/// Adds the weight, or the pieces, that cover the guests with the probability asked for beside
/// those at the average, and the method; or says plainly that it can't be told.
void add_how_sure(Sheet& sheet, const YieldAnswer& answer, const KitchenView& view);

}  // namespace platewright::card
