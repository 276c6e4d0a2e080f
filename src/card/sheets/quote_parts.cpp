#include "card/sheets/quote_parts.hpp"

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
  if (!extra.line.per_guest) return "for the event";
  return decimal(extra.count) + " guests at " + sum_text(extra.line.price, money);
}

std::string overhead_working(const QuoteTerms& terms, const PriceList& money) {
  std::string out = percent_text(terms.overhead) + " of all above";
  if (terms.overhead_of_event > Money()) {
    out += " + " + sum_text(terms.overhead_of_event, money);
  }
  return out;
}

std::string charge_working(const Charge& charge, const Quote& quote, const PriceList& money) {
  std::string out = percent_text(charge.share, 3) + " of " + sum_text(quote.subtotal, money);
  if (charge.after_tax) return out + " and its tax";
  return out + (charge.taxed ? ", taxed" : ", not taxed");
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
  steps.push_back(
      {QuoteStepKind::overhead, "Overhead", overhead_working(quote.terms, money), quote.overhead});
  if (quote.terms.contingency > 0) {
    steps.push_back({QuoteStepKind::contingency, "Contingency",
                     percent_text(quote.terms.contingency) + " of all above", quote.contingency});
  }
  return steps;
}

std::vector<QuoteStep> charge_steps(const Quote& quote, const PriceList& money) {
  std::vector<QuoteStep> steps;
  for (const ExtraCost& extra : quote.billed) {
    steps.push_back({QuoteStepKind::billed, extra.line.name,
                     extra_working(extra, money) + (extra.line.taxed ? ", taxed" : ", not taxed"),
                     extra.cost});
  }
  const QuoteTerms& terms = quote.terms;
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
  steps.push_back({QuoteStepKind::tax, "Tax",
                   percent_text(terms.tax, 3) + " of " + sum_text(quote.taxed, money), quote.tax});
  if (after_tax) add_service();
  return steps;
}

Table bill_table(const Quote& quote, const PriceList& money) {
  Table table{"bill",
              "The quote",
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
  if (quote.minimum_raise > Money()) {
    table.add({words("up to the minimum charge"), {}, {}, card::money(quote.minimum_raise, money)});
  }
  table.totals.push_back({words("Subtotal"), {}, {}, card::money(quote.subtotal, money)});
  for (const QuoteStep& step : charge_steps(quote, money)) {
    table.totals.push_back(
        {words(step.name + ", " + step.working), {}, {}, card::money(step.sum, money)});
  }
  table.totals.push_back({words("TOTAL"), {}, {}, card::money(quote.total, money)});
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
