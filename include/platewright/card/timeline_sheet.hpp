// SPDX-License-Identifier: MIT
#pragma once
// The kitchen's clock.

#include "platewright/card/sheet.hpp"
#include "platewright/event/timeline.hpp"

namespace platewright {

/// Every entry in the order of the clock, with the caution that the thermometer decides.
Sheet timeline_sheet(const Event& event, const Timeline& timeline);

}  // namespace platewright
