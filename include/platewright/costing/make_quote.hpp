// SPDX-License-Identifier: MIT
#pragma once
// Works a quote out.

#include <vector>

#include "platewright/costing/cost_of_food.hpp"
#include "platewright/costing/detail/bill.hpp"
#include "platewright/costing/income_of_price.hpp"
#include "platewright/costing/plate_price.hpp"
#include "platewright/costing/quote.hpp"
#include "platewright/costing/quote_checks.hpp"
#include "platewright/costing/round_money.hpp"
#include "platewright/problem/body.hpp"

namespace platewright {

/// How the cost of this quote's event follows from that of its food.
inline CostOfFood cost_of_food(const Quote& quote) {
  return {quote.terms, quote.labour_total + quote.extras_total + quote.deliveries_total};
}

namespace detail {

void add_billed(Quote& quote, const ExtraCost& cost);

void add_extras(Quote& quote);

/// What is off at this number of guests; nothing below the first step.
Rational step_off(const QuoteTerms& terms, const Rational& guests);

/// Prices of their own may bring in all that is asked for; nobody is paid for coming.
Money exact_price(const Quote& quote);

void add_price(Quote& quote);

void add_outcome(Quote& quote);

}  // namespace detail

/// The quote for `food` (the plate costs of all dishes), what suppliers ask for its `deliveries`,
/// and these guests, in this currency. cost = ((food x (1 + Q) + labour + extras + deliveries) x (1
/// + overhead) + overhead of the event) x (1 + contingency); the price of a guest is rounded up to
/// its step, or to the minor unit where there is none, and a share of it to the minor unit. It is
/// divided among those who pay, be they there or guaranteed and missing, less what guests with a
/// price of their own bring in. Service charge, gratuity, tax and extras that are billed at cost
/// are not the caterer's income here: margin and food cost look at what the guests pay without tax.
/// Discounts cut into it and leave the price as it is. Throws Failure for shares outside their
/// range (a margin of 100 % or more, a food-cost share of 0, a tax above 100
/// %), a cost of 0 or less, a price step of 0 or less, figures below 0, and for no guest who pays.
Quote make_quote(const Money& food, const std::vector<PayingGuests>& guests,
                 const QuoteTerms& terms, const Currency& currency,
                 std::vector<DeliveryCost> deliveries = {});

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/costing/bodies/make_quote.hpp"
#endif
