#pragma once
// A quote, with every step from the food to the price of a guest.

#include <string>

#include "platewright/card/sheet.hpp"
#include "platewright/costing/quote.hpp"
#include "platewright/event/event.hpp"

namespace platewright {

/// The caterer's sheet. The printed costs sum to the printed cost of the event.
Sheet quote_sheet(const Event& event, const Quote& quote, const std::string& currency);

}  // namespace platewright
