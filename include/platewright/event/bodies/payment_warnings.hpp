// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/event/payment_warnings.hpp.

#include "platewright/event/payment_warnings.hpp"

namespace platewright {

PLATEWRIGHT_BODY ProblemList payment_warnings(const Quote& bill, const std::string& event,
                                              const Place& place) {
  ProblemList out;
  if (bill.due >= Money()) return out;
  const auto sum = [&](const Money& money) { return detail::sum_of_money(money, bill.currency); };
  out.add(as_warning(at(
      problems::paid_too_much(event, sum(bill.received), sum(bill.total), sum(-bill.due)), place)));
  return out;
}

PLATEWRIGHT_BODY ProblemList payment_warnings(const EventPlan& plan) {
  const Event& event = plan.event();
  if (!event.has_terms || event.terms.conditions.payments.empty()) return ProblemList();
  const Place& terms = event.terms.place;
  return payment_warnings(event.invoice ? make_invoice(plan).billed : plan.quote(), event.name,
                          terms.line > 0 ? terms : event.place);
}

}  // namespace platewright
