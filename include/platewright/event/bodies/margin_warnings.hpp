// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/event/margin_warnings.hpp.

#include "platewright/event/margin_warnings.hpp"

namespace platewright {

PLATEWRIGHT_BODY std::string cause_of_low_margin(const Quote& quote) {
  const bool discounted = quote.lost_on_extras > Money() || !quote.discounts.empty();
  const std::string discounts = discounted ? "its discounts" : "";
  const std::string also = discounted ? " and " + discounts : "";
  if (quote.terms.agreed_price) {
    return "the agreed price of " + detail::sum_of_money(quote.price, quote.currency) + also;
  }
  if (quote.step_off > 0) {
    return "the price step of " + as_short_decimal(quote.step_off * 100, 2) + " % off for so many" +
           also;
  }
  return discounted ? discounts : "its pricing rule";
}

PLATEWRIGHT_BODY std::string better_price(const std::optional<Money>& price,
                                          const Currency& currency) {
  if (!price) return "higher prices of their own, since no guest pays the full price";
  return detail::sum_of_money(*price, currency) + " or more for a full price";
}

PLATEWRIGHT_BODY ProblemList margin_warnings(const Quote& quote, const std::string& event,
                                             const Place& place) {
  ProblemList out;
  const auto notice = margin_notice(quote);
  if (!notice) return out;
  const auto sum = [&](const Money& money) { return detail::sum_of_money(money, quote.currency); };
  const std::string cause = cause_of_low_margin(quote);
  const Problem problem =
      notice->fault == MarginFault::loss
          ? problems::quote_at_a_loss(event, sum(quote.income), sum(quote.cost), cause,
                                      better_price(notice->covering_price, quote.currency))
          : problems::margin_below_asked(event, sum(quote.income), sum(quote.target), cause,
                                         better_price(notice->asked_price, quote.currency));
  out.add(as_warning(at(problem, place)));
  return out;
}

PLATEWRIGHT_BODY ProblemList margin_warnings(const EventPlan& plan) {
  const Event& event = plan.event();
  if (!event.has_terms) return ProblemList();
  const Place& terms = event.terms.place;
  return margin_warnings(plan.quote(), event.name, terms.line > 0 ? terms : event.place);
}

}  // namespace platewright
