// SPDX-License-Identifier: MIT
#pragma once
// The bill of a quote: lines, discounts, charges, taxes, and what is paid when.

#include <string>
#include <vector>

#include "platewright/costing/detail/tax_bases.hpp"
#include "platewright/costing/quote.hpp"
#include "platewright/costing/round_money.hpp"
#include "platewright/problem/body.hpp"
#include "platewright/quantity/positive.hpp"

namespace platewright::detail {

/// How many were guaranteed and do not come, of those who pay at all.
Rational missing_guests(const std::vector<PayingGuests>& guests, const QuoteTerms& terms);

/// One line for all of them.
void add_missing(Quote& quote, const Rational& count);

/// What is off `base`, the name of which is `of`; together never more than the base.
std::vector<DiscountLine> discounts_off(const Quote& quote, const std::string& of,
                                        const Money& base);

Money sum_of(const std::vector<DiscountLine>& discounts);

/// The price of one of a kind: a share of the full price is rounded up to the minor unit.
Money price_of_kind(const Quote& quote, const PayingGuests& kind);

void add_lines(Quote& quote, const std::vector<PayingGuests>& guests);

/// Service charge, gratuity and taxes; a charge after tax comes last.
void add_charges(Quote& quote);

/// A share of the total half up to the minor unit; never more than is left to pay.
Money deposit_of(const std::optional<Deposit>& deposit, const Quote& quote);

void add_payments(Quote& quote);

}  // namespace platewright::detail

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/costing/bodies/detail/bill.hpp"
#endif
