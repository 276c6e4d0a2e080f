// SPDX-License-Identifier: MIT
#pragma once
// What a quote leaves too little of, as a warning.

#include <optional>
#include <string>

#include "platewright/costing/margin_notice.hpp"
#include "platewright/event/event_plan.hpp"
#include "platewright/number/write.hpp"
#include "platewright/problem/body.hpp"
#include "platewright/problem/catalogue/quotes.hpp"
#include "platewright/problem/problem_list.hpp"

namespace platewright {

namespace detail {

/// `42.67 USD`.
inline std::string sum_of_money(const Money& sum, const Currency& currency) {
  return as_decimal(sum.in(units::currency_unit), currency.minor_digits()) + " " + currency.code();
}

}  // namespace detail

/// What keeps the bill below what the rule asks for: `the agreed price of 30.00 USD`.
std::string cause_of_low_margin(const Quote& quote);

/// `42.67 USD or more for a full price`.
std::string better_price(const std::optional<Money>& price, const Currency& currency);

/// A warning where the bill of a quote comes to less than its rule asks for, or than the event
/// costs; nothing else. It never fails.
ProblemList margin_warnings(const Quote& quote, const std::string& event, const Place& place);

/// The same of an event; nothing where it has no terms. Throws Failure as `EventPlan::quote` does.
ProblemList margin_warnings(const EventPlan& plan);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/event/bodies/margin_warnings.hpp"
#endif
