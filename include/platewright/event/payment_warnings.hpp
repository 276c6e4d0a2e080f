// SPDX-License-Identifier: MIT
#pragma once
// What was paid beyond what is to be paid, as a warning.

#include "platewright/event/invoice.hpp"
#include "platewright/event/margin_warnings.hpp"
#include "platewright/problem/body.hpp"

namespace platewright {

/// A warning where more was received than the bill comes to; nothing else. It never fails.
ProblemList payment_warnings(const Quote& bill, const std::string& event, const Place& place);

/// The same of an event: of its invoice where it has one, else of its quote; nothing where it has
/// no terms. Throws Failure as `EventPlan::quote` does.
ProblemList payment_warnings(const EventPlan& plan);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/event/bodies/payment_warnings.hpp"
#endif
