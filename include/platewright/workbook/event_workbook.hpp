// SPDX-License-Identifier: MIT
#pragma once
// Cost, order and quote of an event as a workbook that goes on calculating.

#include "platewright/event/event_plan.hpp"
#include "platewright/workbook/workbook.hpp"

namespace platewright {

/// The sheets `Prices`, `Cost`, `Order` and, where the event says how to quote, `Quote`. Every
/// price and every term stands in one cell of `Prices`; from there on all is formulas, their
/// rounding included: lines rounded so that they add up (largest-remainder method), packs and the
/// price for a guest rounded up, sums half up to the minor unit. Amounts, numbers of guests, offers
/// and whole pieces are those of the plan and do not follow. A rounding first takes off what binary
/// fractions add: the ninth decimal of a number of packs or steps, the sixth of a number of minor
/// units. Throws Failure as cost, order and quote of the plan do.
Workbook event_workbook(const EventPlan& plan);

}  // namespace platewright
