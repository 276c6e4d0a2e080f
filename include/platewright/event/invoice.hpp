// SPDX-License-Identifier: MIT
#pragma once
// The bill after an event: who came, what came on top, at the price that was quoted.

#include <algorithm>
#include <utility>

#include "platewright/event/event_plan.hpp"
#include "platewright/problem/body.hpp"
#include "platewright/problem/catalogue/quotes.hpp"

namespace platewright {

/// What was quoted, and what is to be paid for it now.
struct Invoice {
  Quote quoted;
  Quote billed;
};

/// The guests that the invoice says came, each kind that it leaves out as expected, at the full
/// price quoted; who was guaranteed and did not come pays, as in every quote. What came on top
/// stands on the bill. The cost is that of the plan. Throws Failure, at the event's place, for an
/// event without an invoice, and as `quote_for` does.
Invoice make_invoice(const EventPlan& plan);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/event/bodies/invoice.hpp"
#endif
