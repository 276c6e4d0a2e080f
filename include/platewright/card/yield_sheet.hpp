// SPDX-License-Identifier: MIT
#pragma once
// A ladder walked down and up.

#include "platewright/card/kitchen_view.hpp"
#include "platewright/card/sheet.hpp"
#include "platewright/yield/chosen_row.hpp"
#include "platewright/yield/yield_answer.hpp"

namespace platewright {

/// The ladder's rungs with their sources, and the answers. The rows that the one used was chosen
/// from are named where one of them lies far from it, or where the user asked to `choose`; and so
/// is the row that takes out the bone where the last weight still holds it.
Sheet yield_sheet(const ChosenRow& chosen, const YieldAnswer& answer, const KitchenView& view,
                  bool choose = false);

}  // namespace platewright
