// SPDX-License-Identifier: MIT
// Who a quote is for, and what its paper says besides sums.

#include "files/terms_of_quote.hpp"
#include "platewright/event/local_time.hpp"
#include "platewright/problem/catalogue/files.hpp"

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

void read_invoice(yaml::Fields& top, const Reading& reading, Event& event) {
  const yaml::Node* node = top.find("invoice");
  if (node == nullptr) return;
  yaml::Fields fields(*node, reading.context(), top.path() + " > invoice", invoice_keys());
  if (!fields.is_map()) {
    reading.problems.add(at(problems::wrong_shape(yaml::shape_of(*node), "a map of keys"),
                            top.place(*node, "invoice")));
    return;
  }
  const auto day = [&](std::string_view key) {
    return fields.read<LocalDay>(key, [](const std::string& text) { return read_local_day(text); });
  };
  InvoiceTerms out;
  out.number = fields.needed_text("invoice number", "invoice number: 2027-118").value_or("");
  fields.need("invoice date", "invoice date: 2027-10-11");
  if (const auto written = day("invoice date")) out.written = *written;
  out.due_by = day("due by");
  for (const TextPair& pair : text_pairs(fields, "came")) {
    reading.problems.attempt(pair.value_place, [&] {
      const GuestKind& kind = kind_called(event, pair.key, pair.key_place);
      out.came[kind.name] = read_guest_count(pair.value);
    });
  }
  for (const yaml::Node& item : fields.list("extras")) {
    yaml::Fields extra(item, reading.context(), fields.path() + " > extras", extra_keys());
    out.extras.push_back(read_extra(extra, event.terms.tax, true));
    extra.finish();
  }
  fields.finish();
  event.invoice = std::move(out);
}

}  // namespace platewright::reading
