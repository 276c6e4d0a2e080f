// Who a quote is for, and what its paper says besides sums.

#include "files/terms_of_quote.hpp"
#include "platewright/event/local_time.hpp"

namespace platewright::reading {

void read_occasion_paper(yaml::Fields& event, Paper& out) {
  out.caterer = event.texts("caterer");
  out.client = event.texts("client");
  out.contact = event.text("contact").value_or("");
  out.venue = event.texts("venue");
  out.service_style = event.text("service style").value_or("");
}

void read_quote_paper(yaml::Fields& quote, Paper& out) {
  out.number = quote.text("quote number").value_or("");
  out.written = quote.read<LocalDay>("quote date",
                                     [](const std::string& text) { return read_local_day(text); });
  out.includes = quote.texts("includes");
  out.other_terms = quote.texts("other terms");
}

}  // namespace platewright::reading
