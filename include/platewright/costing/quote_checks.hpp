// SPDX-License-Identifier: MIT
#pragma once
// What a quote can't be made from.

#include <string_view>
#include <vector>

#include "platewright/costing/quote.hpp"
#include "platewright/problem/body.hpp"
#include "platewright/problem/catalogue/costs.hpp"
#include "platewright/quantity/positive.hpp"

namespace platewright {

/// Throws Failure for a share that is not from 0 to 1.
void check_share(std::string_view what, const Rational& share);

/// Throws Failure for a share that the rule can't work with.
void check_pricing_rule(PricingRule rule, const Rational& share);

/// Throws Failure where a charge contradicts the taxes.
void check_service(const QuoteTerms& terms);

/// Throws Failure for an agreed price below 0, or below the minimum for a guest.
void check_agreed_price(const QuoteTerms& terms);

/// Throws Failure for deposits that are none, or together more than all.
void check_deposits(const Conditions& conditions);

namespace detail {

void check_terms(const QuoteTerms& terms);

}  // namespace detail

/// Throws Failure for counts, shares and prices below 0, and where no one pays.
void check_guests(const std::vector<PayingGuests>& guests);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/costing/bodies/quote_checks.hpp"
#endif
