// SPDX-License-Identifier: MIT
#pragma once
// What can be wrong with the terms of a quote as they are written.

#include <string>
#include <string_view>
#include <vector>

#include "platewright/problem/body.hpp"
#include "platewright/problem/problem.hpp"
#include "platewright/problem/text.hpp"

namespace platewright::problems {

Problem pricing_rules_count(int found);

Problem share_or_sum_unclear(std::string_view what, std::string_view found);

Problem dates_out_of_order(std::string_view what, std::string_view day, std::string_view other,
                           std::string_view other_day);

Problem price_steps_not_rising(std::string_view found);

Problem cancellation_malformed(std::string_view found);

Problem cancellation_not_rising(std::string_view found);

Problem tax_rate_unclear(const std::vector<std::string>& names);

Problem taxed_parts_not_whole(std::string_view sum);

Problem guest_price_twice(std::string_view kind);

Problem extra_counted_twice(std::string_view item);

Problem invoice_missing(std::string_view event);

Problem workers_counted_twice(std::string_view role);

/// The sums are written as money with its currency; `cause` is what keeps the bill so low.
Problem quote_at_a_loss(std::string_view event, std::string_view paid, std::string_view cost,
                        std::string_view cause, std::string_view covering_price);

Problem paid_too_much(std::string_view event, std::string_view received, std::string_view total,
                      std::string_view over);

Problem margin_below_asked(std::string_view event, std::string_view paid, std::string_view asked,
                           std::string_view cause, std::string_view asked_price);

Problem quote_terms_missing(std::string_view event);

}  // namespace platewright::problems

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/problem/bodies/catalogue/quotes.hpp"
#endif
