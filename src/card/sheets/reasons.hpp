// SPDX-License-Identifier: MIT
#pragma once
// Why a line is what it is: its inputs and its formula.

#include <string>
#include <vector>

#include "platewright/card/sheet.hpp"
#include "platewright/costing/quote.hpp"
#include "platewright/event/event_cost.hpp"

namespace platewright::card {

/// One line with what it is worked out from. The labels of its inputs have no keys yet.
struct Reason {
  /// The first one is its title; a user may ask by any of them, as a sheet prints them.
  std::vector<std::string> names;
  std::string formula;
  std::vector<Fact> inputs;
  Cell result;
};

/// One for the total, and one for each line that costs something.
std::vector<Reason> reasons_of_plate(const PlateCost& cost, const PriceList& prices);

/// One for every line and figure of the caterer's quote, and for each dish.
std::vector<Reason> reasons_of_quote(const EventCost& cost, const Quote& quote,
                                     const PriceList& prices);

}  // namespace platewright::card
