#pragma once
// What the readers of a quote's terms share.

#include <string>
#include <string_view>

#include "files/reading.hpp"

namespace platewright::reading {

/// Whether the text is a share; `12 %` is one, `0.12` too, `12.00` is a sum. Throws Failure for
/// `12`.
bool says_share(std::string_view what, const std::string& text);

/// Deposits, dates, what is guaranteed, what a cancellation costs.
void read_conditions(yaml::Fields& quote, Conditions& out);

/// Reports dates of a quote that are in the wrong order.
void check_days(yaml::Fields& quote, const Event& event);

/// For whom the event is, where, and how it is served: keys of the event itself.
void read_occasion_paper(yaml::Fields& event, Paper& out);

/// The number and the day of a quote, what its price includes, terms in words.
void read_quote_paper(yaml::Fields& quote, Paper& out);

}  // namespace platewright::reading
