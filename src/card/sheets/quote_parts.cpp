// SPDX-License-Identifier: MIT
#include "card/sheets/quote_parts.hpp"

#include "platewright/costing/divide_bill.hpp"

namespace platewright::card {
namespace {

std::string decimal(const Rational& value) {
  return as_short_decimal(value, 2);
}

std::string sum_text(const Money& value, const PriceList& money) {
  return money_text(plain(value), money.currency);
}

std::string labour_working(const LabourCost& labour, const PriceList& money) {
  const Money hourly = labour.line.rate * Duration::of(1, units::hour);
  std::string out = decimal(labour.workers) + " \u00D7 " +
                    duration_text(labour.line.time.in(units::minute), Rounding::up) + " at " +
                    sum_text(hourly, money);
  if (labour.line.benefits > 0) out += " + " + percent_text(labour.line.benefits) + " benefits";
  if (labour.line.guests_per_worker) {
    out += ", one for " + decimal(*labour.line.guests_per_worker) + " guests";
  }
  return out;
}

std::string extra_working(const ExtraCost& extra, const PriceList& money) {
  if (!extra.line.per_guest && extra.count == 1) return "for the event";
  if (!extra.line.per_guest) {
    return decimal(extra.count) + " at " + sum_text(extra.line.price, money);
  }
  return decimal(extra.count) + " guests at " + sum_text(extra.line.price, money);
}

/// `2 at 12.50`, as the order of the event has them.
std::string delivery_working(const DeliveryCost& supplier, const PriceList& money) {
  return std::to_string(supplier.deliveries) + " at " + sum_text(supplier.charge, money) +
         ", by the order";
}

std::string overhead_working(const QuoteTerms& terms, const PriceList& money) {
  std::string out = percent_text(terms.overhead) + " of all above";
  if (terms.overhead_of_event > Money()) {
    out += " + " + sum_text(terms.overhead_of_event, money);
  }
  return out;
}

/// `, taxed`, `, not taxed`, or the rates where there are several: `, taxed as food`.
std::string taxed_text(const Taxed& taxed, const TaxRates& rates) {
  if (!taxed) return ", not taxed";
  std::string names;
  for (const TaxedPart& part : taxed.parts()) {
    const std::string& name = rates[part.rate].name;
    if (name.empty()) return ", taxed";
    names += names.empty() ? "" : " and ";
    if (part.share != 1) names += percent_text(part.share, 2) + " ";
    names += name;
  }
  return ", taxed as " + names;
}

std::string charge_working(const Charge& charge, const Quote& quote, const PriceList& money) {
  std::string out = percent_text(charge.share, 3) + " of " + sum_text(quote.subtotal, money);
  if (charge.after_tax) return out + " and its tax";
  return out + taxed_text(charge.taxed, quote.terms.tax);
}

std::string discount_working(const DiscountLine& line, const PriceList& money) {
  std::string out = "off ";
  if (line.discount.share) out = percent_text(*line.discount.share, 2) + " off ";
  return out + sum_text(line.base, money);
}

}  // namespace

std::vector<QuoteStep> cost_steps(const Quote& quote, const PriceList& money) {
  std::vector<QuoteStep> steps;
  steps.push_back({QuoteStepKind::food, "Food", "plate cost of all dishes", quote.food});
  steps.push_back({QuoteStepKind::q_factor, "Q factor",
                   percent_text(quote.terms.q_factor) + " of the food", quote.q_factor});
  for (const LabourCost& labour : quote.labour) {
    steps.push_back(
        {QuoteStepKind::labour, labour.line.role, labour_working(labour, money), labour.cost});
  }
  for (const ExtraCost& extra : quote.extras) {
    steps.push_back(
        {QuoteStepKind::extra, extra.line.name, extra_working(extra, money), extra.cost});
  }
  for (const DeliveryCost& supplier : quote.deliveries) {
    steps.push_back({QuoteStepKind::delivery, "Deliveries, " + supplier.supplier,
                     delivery_working(supplier, money), supplier.cost()});
  }
  steps.push_back(
      {QuoteStepKind::overhead, "Overhead", overhead_working(quote.terms, money), quote.overhead});
  if (quote.terms.contingency > 0) {
    steps.push_back({QuoteStepKind::contingency, "Contingency",
                     percent_text(quote.terms.contingency) + " of all above", quote.contingency});
  }
  return steps;
}

std::vector<QuoteStep> discount_steps(const std::vector<DiscountLine>& discounts,
                                      const PriceList& money) {
  std::vector<QuoteStep> steps;
  for (const DiscountLine& line : discounts) {
    steps.push_back(
        {QuoteStepKind::discount, line.discount.name, discount_working(line, money), -line.amount});
  }
  return steps;
}

std::vector<QuoteStep> tax_steps(const Quote& quote, const PriceList& money) {
  const bool included = quote.terms.prices_include_tax;
  std::vector<QuoteStep> steps;
  for (const TaxLine& line : quote.taxes) {
    const std::string name = line.rate.name.empty() ? "Tax" : "Tax, " + line.rate.name;
    steps.push_back({QuoteStepKind::tax, included ? "of which t" + name.substr(1) : name,
                     percent_text(line.rate.share, 3) + (included ? " in " : " of ") +
                         sum_text(line.base, money) +
                         (included ? ", net " + sum_text(line.base - line.tax, money) : ""),
                     line.tax});
  }
  return steps;
}

std::vector<QuoteStep> charge_steps(const Quote& quote, const PriceList& money) {
  std::vector<QuoteStep> steps;
  const QuoteTerms& terms = quote.terms;
  for (const BilledExtra& extra : quote.billed) {
    const ExtraLine& line = extra.cost.line;
    steps.push_back({QuoteStepKind::billed, line.name,
                     extra_working(extra.cost, money) + taxed_text(line.taxed, terms.tax),
                     extra.cost.cost});
    for (QuoteStep& step : discount_steps(extra.discounts, money)) steps.push_back(std::move(step));
  }
  const auto add_service = [&] {
    if (!terms.service) return;
    steps.push_back({QuoteStepKind::service, "Service charge",
                     charge_working(*terms.service, quote, money), quote.service});
  };
  const bool after_tax = terms.service && terms.service->after_tax;
  if (!after_tax) add_service();
  if (terms.gratuity) {
    steps.push_back({QuoteStepKind::gratuity, "Gratuity",
                     charge_working(*terms.gratuity, quote, money), quote.gratuity});
  }
  if (!terms.prices_include_tax) {
    for (QuoteStep& step : tax_steps(quote, money)) steps.push_back(std::move(step));
  }
  if (after_tax) add_service();
  return steps;
}

void add_payers(const Quote& quote, const PriceList& money, Sheet& sheet) {
  const std::vector<PayerShare> payers = divide_bill(quote);
  if (payers.size() == 1) return;
  Table table{"payers",
              "Who pays what",
              {words_column("payer", "Payer"), figures_column("guests", "For their guests"),
               figures_column("share", "Of the total")},
              {},
              {},
              {"Extras are the client's; charges, discounts and tax follow what the guests of each "
               "come to."}};
  for (const PayerShare& payer : payers) {
    table.add({words(payer.payer.empty() ? "the client" : payer.payer),
               card::money(payer.guests, money), card::money(payer.share, money)});
  }
  table.totals.push_back({words("TOTAL"), {}, card::money(quote.total, money)});
  sheet.add(std::move(table));
}

Table bill_table(const Quote& quote, const PriceList& money, std::string title) {
  Table table{"bill",
              std::move(title),
              {words_column("line", "Line"), figures_column("count", "Guests"),
               figures_column("price", "Price"), figures_column("amount", "Amount")},
              {},
              {},
              {}};
  for (const QuoteLine& line : quote.lines) {
    table.add({words(line.guests.kind), number_cell(line.guests.count, 2),
               card::money(line.price, money), card::money(line.amount, money)});
  }
  if (quote.missing) {
    table.add({words(quote.missing->guests.kind), number_cell(quote.missing->guests.count, 2),
               card::money(quote.missing->price, money),
               card::money(quote.missing->amount, money)});
  }
  for (const QuoteStep& step : discount_steps(quote.discounts, money)) {
    table.add({words(step.name + ", " + step.working), {}, {}, card::money(step.sum, money)});
  }
  if (quote.minimum_raise > Money()) {
    table.add({words("up to the minimum charge"), {}, {}, card::money(quote.minimum_raise, money)});
  }
  const auto add_total = [&](const std::string& name, const Money& sum) {
    table.totals.push_back({words(name), {}, {}, card::money(sum, money)});
  };
  const auto add_steps = [&](const std::vector<QuoteStep>& steps) {
    for (const QuoteStep& step : steps) add_total(step.name + ", " + step.working, step.sum);
  };
  add_total("Subtotal", quote.subtotal);
  add_steps(charge_steps(quote, money));
  add_total("TOTAL", quote.total);
  if (quote.terms.prices_include_tax) add_steps(tax_steps(quote, money));
  return table;
}

std::string rule_text(const QuoteTerms& terms) {
  const std::string share = percent_text(terms.rule_share, 2);
  switch (terms.rule) {
    case PricingRule::margin:
      return "margin of " + share + " on the price: cost / (1 - " + share + ")";
    case PricingRule::mark_up:
      return "mark-up of " + share + " on the cost: cost \u00D7 (1 + " + share + ")";
    case PricingRule::food_cost:
      return "food cost of " + share + " of the price: food with Q / " + share;
  }
  return {};
}

void begin_event_sheet(const Event& event, Sheet& sheet) {
  if (event.at) sheet.date = date_text(event.at->local());
  sheet.subtitles = {guests_text(event)};
  if (const std::string served = served_text(event); !served.empty()) {
    sheet.subtitles.push_back(served);
  }
}

}  // namespace platewright::card
