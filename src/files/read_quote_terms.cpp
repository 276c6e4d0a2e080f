// SPDX-License-Identifier: MIT
// The `quote` of an event: what comes on top of the food, and the pricing rule.

#include "files/terms_of_quote.hpp"
#include "platewright/costing/make_quote.hpp"
#include "platewright/problem/catalogue/books.hpp"
#include "platewright/problem/catalogue/numbers.hpp"
#include "platewright/problem/catalogue/quotes.hpp"

namespace platewright::reading {
namespace {

LabourLine labour_line(yaml::Fields& fields, const Reading& reading) {
  LabourLine line;
  line.role = fields.needed_text("role", "role: cook").value_or("");
  const auto workers = fields.take<Rational>("workers", [](const std::string& text) {
    const Rational out = read_number(text);
    if (out <= 0) throw Failure(problems::number_not_positive("a number of workers", text));
    return out;
  });
  line.workers = workers.value_or(1);
  const auto time = fields.read<Duration>(
      "time", [&](const std::string& text) { return to_duration(reading.amount(text)); });
  fields.need("time", "time: 8 h");
  line.time = time.value_or(Duration());
  if (const auto rate = fields.needed_text("rate", "rate: 24.00 per hour")) {
    const SplitText parts = split_at(*rate, " per ");
    const Amount per = reading.amount("1 " + (parts.after.empty() ? "hour" : parts.after));
    line.rate = read_money(parts.before) / to_duration(per);
  }
  line.benefits = fields.share("benefits").value_or(0);
  line.guests_per_worker = fields.number("guests per worker");
  if (workers && line.guests_per_worker) {
    throw Failure(problems::workers_counted_twice(in_quotes(line.role)));
  }
  if (line.guests_per_worker && *line.guests_per_worker <= 0) {
    throw Failure(problems::number_not_positive("a number of guests for a worker", "0"));
  }
  return line;
}

void read_rule(yaml::Fields& fields, const Reading& reading, QuoteTerms& terms) {
  struct Rule {
    std::string_view key;
    PricingRule rule;
  };
  int rules = 0;
  for (const Rule& rule :
       {Rule{"margin", PricingRule::margin}, Rule{"mark-up", PricingRule::mark_up},
        Rule{"food cost", PricingRule::food_cost}}) {
    if (const auto share = fields.share(rule.key)) {
      ++rules;
      terms.rule = rule.rule;
      terms.rule_share = *share;
      reading.problems.attempt(fields.place(*fields.find(rule.key), rule.key),
                               [&] { platewright::check_pricing_rule(rule.rule, *share); });
    } else if (fields.find(rule.key) != nullptr) {
      ++rules;  // already reported as no share
    }
  }
  if (rules != 1) {
    reading.problems.add(at(problems::pricing_rules_count(rules), fields.place()));
  }
}

/// `18 %, taxed`, `18 %, taxed as food`, `18 %` or `18 %, after tax`; the comma may be missing.
Charge read_charge(const std::string& text, const TaxRates& rates) {
  SplitText parts = split_at(text, ",");
  if (const SplitText bare = split_at(text, "%"); parts.after.empty() && !bare.after.empty()) {
    parts = {bare.before + " %", bare.after};
  }
  const std::string& word = parts.after;
  const SplitText as = split_at(word, "taxed as ");
  const bool named = as.before.empty() && !as.after.empty();
  if (!named && !word.empty() && word != "taxed" && word != "not taxed" && word != "after tax") {
    throw Failure(problems::word_unknown("word", word, {"taxed", "not taxed", "after tax"}));
  }
  const Rational share = read_share(parts.before);
  platewright::check_share("a charge", share);
  const Taxed taxed =
      named ? taxed_as(as.after, rates) : taxed_as(word == "taxed" ? "yes" : "no", rates);
  return Charge{share, taxed, word == "after tax"};
}

/// `12 %`, `180.00`, or both: `12 % and 180.00`.
void read_overhead(yaml::Fields& fields, QuoteTerms& terms) {
  fields.read<bool>("overhead", [&](const std::string& text) {
    const SplitText parts = split_at(text, " and ");
    for (const std::string& part : {parts.before, parts.after}) {
      if (part.empty()) continue;
      if (says_share("an overhead", part)) {
        terms.overhead = read_share(part);
      } else {
        terms.overhead_of_event = read_money(part);
      }
    }
    return true;
  });
}

/// A share from 0 to 100 %; 0 where the key is not there.
Rational share_of_cost(yaml::Fields& fields, std::string_view key) {
  return fields
      .read<Rational>(key,
                      [&](const std::string& text) {
                        const Rational share = read_share(text);
                        platewright::check_share(key, share);
                        return share;
                      })
      .value_or(0);
}

void read_price_steps(yaml::Fields& fields, QuoteTerms& terms) {
  for (const TextPair& pair : text_pairs(fields, "price steps")) {
    fields.context().problems.attempt(pair.value_place, [&] {
      const SplitText guests = split_at(pair.key, " guests");
      const Rational from = read_number(guests.before);
      const Rational off = read_share(pair.value);
      platewright::check_share("what is off the price", off);
      for (const PriceStep& other : terms.price_steps) {
        if ((from > other.from) == (off > other.off) && from != other.from && off != other.off) {
          continue;
        }
        throw Failure(problems::price_steps_not_rising(pair.key));
      }
      terms.price_steps.push_back({from, off});
    });
  }
}

/// Reports keys that are right by themselves and contradict each other, at the one to correct.
void check_together(yaml::Fields& fields, const Reading& reading, const QuoteTerms& terms) {
  const auto attempt = [&](std::string_view key, auto&& check) {
    const yaml::Node* node = fields.find(key);
    if (node != nullptr) reading.problems.attempt(fields.place(*node, key), check);
  };
  attempt("agreed price", [&] { platewright::check_agreed_price(terms); });
  attempt("service", [&] { platewright::check_service(terms); });
  attempt("second deposit", [&] { platewright::check_deposits(terms.conditions); });
}

}  // namespace

ExtraLine read_extra(yaml::Fields& fields, const TaxRates& rates, bool on_the_bill) {
  ExtraLine line;
  line.name = fields.needed_text("item", "item: linen hire").value_or("");
  fields.need("price", "price: 180.00");
  line.price = fields.read<Money>("price", [](const std::string& text) { return read_money(text); })
                   .value_or(Money());
  line.per_guest = fields.flag("per guest");
  if (const auto count = fields.number("count")) {
    line.count = *count;
    if (line.per_guest) {
      fields.context().problems.add(at(problems::extra_counted_twice(in_quotes(line.name)),
                                       fields.place(*fields.find("count"), "count")));
    }
  }
  line.billed = on_the_bill || fields.flag("billed");
  line.taxed = Taxed(rates[0].name.empty());
  const auto taxed =
      fields.read<Taxed>("taxed", [&](const std::string& text) { return taxed_as(text, rates); });
  if (taxed) {
    line.taxed = *taxed;
  } else if (line.billed && !line.taxed && fields.find("taxed") == nullptr) {
    fields.need("taxed", "taxed: " + rates[0].name);
  }
  return line;
}

void read_quote_terms(const yaml::Node& node, const Reading& reading, const std::string& path,
                      Event& event) {
  QuoteTerms& terms = event.terms;
  yaml::Fields fields(node, reading.context(), path, quote_keys());
  if (!fields.is_map()) return;
  read_tax(fields, terms);
  terms.q_factor = share_of_cost(fields, "q factor");
  for (const yaml::Node& item : fields.list("labour")) {
    yaml::Fields labour(item, reading.context(), path + " > labour", labour_keys());
    labour.finish(reading.problems.attempt(
        labour.place(), [&] { terms.labour.push_back(labour_line(labour, reading)); }));
  }
  for (const yaml::Node& item : fields.list("extras")) {
    yaml::Fields extra(item, reading.context(), path + " > extras", extra_keys());
    terms.extras.push_back(read_extra(extra, terms.tax, false));
    extra.finish();
  }
  read_overhead(fields, terms);
  terms.contingency = share_of_cost(fields, "contingency");
  read_rule(fields, reading, terms);
  terms.round_up_to = fields.read<Money>("round up to", [](const std::string& text) {
    const Money step = read_money(text);
    if (step <= Money()) throw Failure(problems::number_not_positive("a step", text));
    return step;
  });
  read_price_steps(fields, terms);
  terms.minimum_charge = fields.read<Money>(
      "minimum charge", [](const std::string& text) { return read_money(text); });
  terms.minimum_price = fields.read<Money>(
      "minimum per guest", [](const std::string& text) { return read_money(text); });
  terms.agreed_price = fields.read<Money>("agreed price", [](const std::string& text) {
    const Money price = read_money(text);
    if (price <= Money()) throw Failure(problems::number_not_positive("a price", text));
    return price;
  });
  terms.service = fields.read<Charge>(
      "service", [&](const std::string& text) { return read_charge(text, terms.tax); });
  terms.gratuity = fields.read<Charge>("gratuity", [&](const std::string& text) {
    const Charge charge = read_charge(text, terms.tax);
    if (charge.after_tax) {
      throw Failure(problems::word_unknown("word", "after tax", {"taxed", "not taxed"}));
    }
    return charge;
  });
  read_price_taxed(fields, terms);
  read_discounts(fields, reading, terms);
  read_conditions(fields, terms.conditions);
  read_payments(fields, reading, terms.conditions);
  read_quote_paper(fields, event.paper);
  check_days(fields, event);
  check_together(fields, reading, terms);
  fields.finish();
}

}  // namespace platewright::reading
