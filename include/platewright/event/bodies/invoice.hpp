// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/event/invoice.hpp.

#include "platewright/event/invoice.hpp"

namespace platewright {

PLATEWRIGHT_BODY Invoice make_invoice(const EventPlan& plan) {
  Event event = plan.event();
  if (!event.invoice) {
    throw Failure(at(problems::invoice_missing(in_quotes(event.name)), event.place));
  }
  const Quote quoted = plan.quote();
  event.terms.agreed_price = quoted.price;
  for (GuestKind& kind : event.guests) {
    const auto came = event.invoice->came.find(kind.name);
    if (came != event.invoice->came.end()) kind.count = came->second;
  }
  for (const ExtraLine& extra : event.invoice->extras) event.terms.extras.push_back(extra);
  return {quoted, quote_for(event, plan.cost(), plan.prices())};
}

}  // namespace platewright
