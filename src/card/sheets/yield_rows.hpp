// SPDX-License-Identifier: MIT
#pragma once
// The rows beside the one that a yield sheet uses: what else might have been meant, and which of
// them takes out a bone that is still in the weight.

#include <string>

#include "platewright/card/sheet.hpp"
#include "platewright/yield/chosen_row.hpp"

namespace platewright::card {

/// All rows that the one used was chosen from, that one marked.
void add_rows(Sheet& sheet, const ChosenRow& chosen);

/// Says what the last weight of `ladder`, the row's own or with the cook's tests, still holds, and
/// which row takes it out. Nothing where all of it is food.
void add_still_held(Sheet& sheet, const ChosenRow& chosen, const Ladder& ladder);

/// Says that the portions are raw weight where a cut's ladder ends before it is cooked.
void add_still_raw(Sheet& sheet, const ChosenRow& chosen, const Ladder& ladder);

/// ` with the bone in it`, for what a portion of such a ladder is; empty where all of it is food.
std::string with_what_is_held(const Ladder& ladder);

}  // namespace platewright::card
