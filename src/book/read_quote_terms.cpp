// The `quote` of an event: what comes on top of the food, and the pricing rule.

#include "book/reading.hpp"
#include "platewright/problem/catalogue/books.hpp"
#include "platewright/costing/make_quote.hpp"
#include "platewright/problem/catalogue/numbers.hpp"
#include "platewright/problem/catalogue/quotes.hpp"

namespace platewright::reading {
namespace {

LabourLine labour_line(yaml::Fields& fields, const Reading& reading) {
  LabourLine line;
  line.role = fields.needed_text("role", "role: cook").value_or("");
  line.workers = fields.number("workers").value_or(1);
  const auto time = fields.read<Duration>("time", [&](const std::string& text) {
    return to_duration(reading.amount(text));
  });
  fields.need("time", "time: 8 h");
  line.time = time.value_or(Duration());
  if (const auto rate = fields.needed_text("rate", "rate: 24.00 per hour")) {
    const SplitText parts = split_at(*rate, " per ");
    const Amount per = reading.amount("1 " + (parts.after.empty() ? "hour" : parts.after));
    line.rate = read_money(parts.before) / to_duration(per);
  }
  return line;
}

void read_rule(yaml::Fields& fields, const Reading& reading, QuoteTerms& terms) {
  struct Rule {
    std::string_view key;
    PricingRule rule;
  };
  int rules = 0;
  for (const Rule& rule : {Rule{"margin", PricingRule::margin}, Rule{"mark-up", PricingRule::mark_up},
                           Rule{"food cost", PricingRule::food_cost}}) {
    if (const auto share = fields.share(rule.key)) {
      ++rules;
      terms.rule = rule.rule;
      terms.rule_share = *share;
      reading.problems.attempt(fields.place(*fields.find(rule.key), rule.key),
                               [&] { platewright::detail::check_rule(rule.rule, *share); });
    } else if (fields.find(rule.key) != nullptr) {
      ++rules;  // already reported as no share
    }
  }
  if (rules != 1) {
    reading.problems.add(at(problems::pricing_rules_count(rules), fields.place()));
  }
}

/// `18 %, taxed` or `18 %`.
Charge read_charge(const std::string& text) {
  const SplitText parts = split_at(text, ",");
  if (!parts.after.empty() && parts.after != "taxed" && parts.after != "not taxed") {
    throw Failure(problems::word_unknown("word", parts.after, {"taxed", "not taxed"}));
  }
  return Charge{read_share(parts.before), parts.after == "taxed"};
}

}  // namespace

void read_quote_terms(const yaml::Node& node, const Reading& reading, const std::string& path,
                      QuoteTerms& terms) {
  yaml::Fields fields(node, reading.context(), path);
  if (!fields.is_map()) return;
  terms.q_factor = fields.share("q factor").value_or(0);
  for (const yaml::Node& item : fields.list("labour")) {
    yaml::Fields labour(item, reading.context(), path + " > labour");
    reading.problems.attempt(labour.place(),
                             [&] { terms.labour.push_back(labour_line(labour, reading)); });
    labour.finish();
  }
  for (const yaml::Node& item : fields.list("extras")) {
    yaml::Fields extra(item, reading.context(), path + " > extras");
    ExtraLine line;
    line.name = extra.needed_text("item", "item: linen hire").value_or("");
    extra.need("price", "price: 180.00");
    line.price = extra.read<Money>("price", [](const std::string& text) { return read_money(text); })
                     .value_or(Money());
    line.per_guest = extra.flag("per guest");
    extra.finish();
    terms.extras.push_back(std::move(line));
  }
  terms.overhead = fields.share("overhead").value_or(0);
  read_rule(fields, reading, terms);
  terms.round_up_to = fields.read<Money>("round up to", [](const std::string& text) {
    const Money step = read_money(text);
    if (step <= Money()) throw Failure(problems::number_not_positive("a step", text));
    return step;
  });
  terms.service = fields.read<Charge>("service", read_charge);
  terms.tax = fields.share("tax").value_or(0);
  if (terms.tax > 1) {
    reading.problems.add(at(problems::share_out_of_range("a tax", as_exact(terms.tax * 100) + " %",
                                                         "at most 100 %"),
                            fields.place(*fields.find("tax"), "tax")));
  }
  fields.finish();
}

}  // namespace platewright::reading
