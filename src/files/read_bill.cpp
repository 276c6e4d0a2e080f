// SPDX-License-Identifier: MIT
// What stands on a bill: rates of tax and what is taxed at them, discounts, payments.

#include <algorithm>
#include <optional>

#include "files/terms_of_quote.hpp"
#include "platewright/costing/quote_checks.hpp"
#include "platewright/event/local_time.hpp"
#include "platewright/problem/catalogue/books.hpp"
#include "platewright/problem/catalogue/numbers.hpp"
#include "platewright/problem/catalogue/quotes.hpp"

namespace platewright::reading {
namespace {

Rational tax_rate_from(const std::string& text) {
  const Rational rate = read_share(text);
  if (rate <= 1) return rate;
  throw Failure(
      problems::share_out_of_range("a tax", as_exact(rate * 100) + " %", "at most 100 %"));
}

std::vector<std::string> tax_names(const TaxRates& rates) {
  std::vector<std::string> out;
  for (const TaxRate& rate : rates.all()) {
    if (!rate.name.empty()) out.push_back(rate.name);
  }
  return out;
}

/// The position of the rate of that name. Throws Failure for one that is not there.
std::size_t rate_called(const std::string& name, const TaxRates& rates) {
  for (std::size_t i = 0; i < rates.size(); ++i) {
    if (rates[i].name == name) return i;
  }
  throw Failure(problems::name_unknown("rate of tax", name, tax_names(rates),
                                       "name one of the rates under `tax`"));
}

bool has_names(const TaxRates& rates) {
  return !rates[0].name.empty();
}

/// Nothing where what it is off can't be told: it must not be taken off anything else.
std::optional<Discount> read_discount(yaml::Fields& fields, const QuoteTerms& terms) {
  Discount out;
  out.name = fields.needed_text("discount", "discount: for a returning client").value_or("");
  fields.need("off", "off: 10 %");
  fields.read<bool>("off", [&](const std::string& text) {
    if (says_share("a discount", text)) {
      out.share = read_share(text);
      platewright::check_share("a discount", *out.share);
    } else {
      out.sum = read_money(text);
    }
    return true;
  });
  const auto of = fields.read<std::string>("of", [&](const std::string& item) {
    std::vector<std::string> billed;
    for (const ExtraLine& line : terms.extras) {
      if (line.billed) billed.push_back(line.name);
    }
    if (std::find(billed.begin(), billed.end(), item) == billed.end()) {
      throw Failure(problems::name_unknown(
          "billed extra", item, billed,
          "name an extra with `billed: yes`, or leave `of` out: it is then off what guests pay"));
    }
    return item;
  });
  fields.finish();
  if (!of && fields.find("of") != nullptr) return std::nullopt;
  out.of = of.value_or("");
  return out;
}

}  // namespace

Taxed taxed_as(const std::string& text, const TaxRates& rates) {
  if (text == "no" || text == "false") return false;
  if (!has_names(rates)) {
    if (text == "yes" || text == "true") return true;
    throw Failure(problems::word_unknown("answer", text, {"yes", "no"}));
  }
  if (text == "yes" || text == "true") {
    throw Failure(problems::tax_rate_unclear(tax_names(rates)));
  }
  return Taxed({TaxedPart{rate_called(text, rates), 1}});
}

void read_tax(yaml::Fields& quote, QuoteTerms& terms) {
  const yaml::Node* tax = quote.find("tax");
  if (tax != nullptr && tax->is_map()) {
    std::vector<TaxRate> rates;
    for (const TextPair& pair : text_pairs(quote, "tax")) {
      quote.context().problems.attempt(pair.value_place, [&] {
        rates.push_back({pair.key, tax_rate_from(pair.value)});
      });
    }
    terms.tax = TaxRates(std::move(rates));
    // Which of several it is must be said.
    if (has_names(terms.tax)) terms.price_taxed = Taxed({TaxedPart{0, 1}});
    if (terms.tax.size() > 1 && quote.find("price taxed") == nullptr) {
      quote.context().problems.add(
          at(problems::tax_rate_unclear(tax_names(terms.tax)), quote.place(*tax, "tax")));
    }
  } else if (const auto rate = quote.read<Rational>("tax", tax_rate_from)) {
    terms.tax = *rate;
  }
  terms.prices_include_tax = quote.flag("prices include tax");
}

void read_price_taxed(yaml::Fields& quote, QuoteTerms& terms) {
  const yaml::Node* taxed = quote.find("price taxed");
  if (taxed == nullptr) return;
  if (!taxed->is_map()) {
    const auto read = quote.read<Taxed>(
        "price taxed", [&](const std::string& text) { return taxed_as(text, terms.tax); });
    if (read) terms.price_taxed = *read;
    return;
  }
  std::vector<TaxedPart> parts;
  Rational sum;
  for (const TextPair& pair : text_pairs(quote, "price taxed")) {
    quote.context().problems.attempt(pair.value_place, [&] {
      parts.push_back({rate_called(pair.key, terms.tax), read_share(pair.value)});
      sum += parts.back().share;
    });
  }
  if (sum != 1) {
    quote.context().problems.add(at(problems::taxed_parts_not_whole(as_exact(sum * 100) + " %"),
                                    quote.place(*taxed, "price taxed")));
  }
  terms.price_taxed = Taxed(std::move(parts));
}

void read_discounts(yaml::Fields& quote, const Reading& reading, QuoteTerms& terms) {
  for (const yaml::Node& item : quote.list("discounts")) {
    yaml::Fields fields(item, reading.context(), quote.path() + " > discounts", discount_keys());
    if (!fields.is_map()) continue;
    if (auto discount = read_discount(fields, terms)) {
      terms.discounts.push_back(*std::move(discount));
    }
  }
}

void read_payments(yaml::Fields& quote, const Reading& reading, Conditions& out) {
  for (const yaml::Node& item : quote.list("payments")) {
    yaml::Fields fields(item, reading.context(), quote.path() + " > payments", payment_keys());
    fields.need("on", "on: 2027-09-01");
    fields.need("amount", "amount: 500.00");
    const auto day =
        fields.read<LocalDay>("on", [](const std::string& text) { return read_local_day(text); });
    const auto sum =
        fields.read<Money>("amount", [](const std::string& text) { return read_money(text); });
    const std::string by = fields.text("by").value_or("");
    if (day && sum) out.payments.push_back({*day, *sum, by});
    fields.finish();
  }
}

}  // namespace platewright::reading
