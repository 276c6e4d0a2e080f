// SPDX-License-Identifier: MIT
#pragma once
// What the readers of a quote's terms share.

#include <string>
#include <string_view>

#include "files/reading.hpp"

namespace platewright::reading {

/// Whether the text is a share; `12 %` is one, `0.12` too, `12.00` is a sum. Throws Failure for
/// `12`.
bool says_share(std::string_view what, const std::string& text);

/// The rates of tax, and whether the prices include it.
void read_tax(yaml::Fields& quote, QuoteTerms& terms);

/// At which of the rates `yes`, `no` or the name of one is. Throws Failure for a name that is none,
/// and for `yes` where the rates have names.
Taxed taxed_as(const std::string& text, const TaxRates& rates);

/// `price taxed`: as above, or `{food: 70 %, drinks: 30 %}`.
void read_price_taxed(yaml::Fields& quote, QuoteTerms& terms);

/// What is off what the guests pay, or off an extra; the extras must be read already.
void read_discounts(yaml::Fields& quote, const Reading& reading, QuoteTerms& terms);

/// What was paid already.
void read_payments(yaml::Fields& quote, const Reading& reading, Conditions& out);

/// Deposits, dates, what is guaranteed, what a cancellation costs.
void read_conditions(yaml::Fields& quote, Conditions& out);

/// Reports dates of a quote that are in the wrong order.
void check_days(yaml::Fields& quote, const Event& event);

/// For whom the event is, where, and how it is served: keys of the event itself.
void read_occasion_paper(yaml::Fields& event, Paper& out);

/// The number and the day of a quote, what its price includes, terms in words.
void read_quote_paper(yaml::Fields& quote, Paper& out);

/// What was written down after the event; its guests and terms must be read already.
void read_invoice(yaml::Fields& event, const Reading& reading, Event& out);

/// The kind of guest that a key names. Throws Failure, at the key, for one that is not there.
GuestKind& kind_called(Event& event, const std::string& name, const Place& place);

/// A whole number. Throws Failure.
Rational read_guest_count(const std::string& text);

}  // namespace platewright::reading
