#include "platewright/card/quote_sheet.hpp"

#include "card/sheets/shared.hpp"

namespace platewright {
namespace {

/// One line of the cost table: what it is, how it is worked out, how much.
struct CostStep {
  std::string key;
  std::string name;
  std::string working;
  Money cost;
};

std::string decimal(const Rational& value) { return as_short_decimal(value, 2); }

std::vector<CostStep> cost_steps(const Quote& quote, const PriceList& money) {
  const auto text = [&](const Money& value) {
    return money_text(card::plain(value), money.minor_digits);
  };
  std::vector<CostStep> steps;
  steps.push_back({"food", "Food", "plate cost of all dishes", quote.food});
  steps.push_back({"q_factor", "Q factor",
                   percent_text(quote.terms.q_factor) + " of the food", quote.q_factor});
  for (const LabourCost& labour : quote.labour) {
    const Money hourly = labour.line.rate * Duration::of(1, units::hour);
    steps.push_back({"labour", labour.line.role,
                     decimal(labour.line.workers) + " \u00D7 " +
                         decimal(labour.line.time.in(units::hour)) + " h at " + text(hourly),
                     labour.cost});
  }
  for (const ExtraCost& extra : quote.extras) {
    steps.push_back({"extra", extra.line.name,
                     extra.line.per_guest
                         ? decimal(extra.count) + " guests at " + text(extra.line.price)
                         : "for the event",
                     extra.cost});
  }
  steps.push_back({"overhead", "Overhead",
                   percent_text(quote.terms.overhead) + " of all above", quote.overhead});
  return steps;
}

Table cost_table(const Quote& quote, const PriceList& money) {
  Table table{"costs", "What it costs us",
              {words_column("line", "Line"), words_column("working", "Worked out"),
               figures_column("cost", "Cost")},
              {}, {}, {}};
  const auto steps = cost_steps(quote, money);
  std::vector<Money> costs;
  for (const CostStep& step : steps) costs.push_back(step.cost);
  const auto cells = card::apportioned_cells(costs, money);
  for (std::size_t i = 0; i < steps.size(); ++i) {
    table.add({words(steps[i].name), words(steps[i].working), cells[i]});
  }
  table.totals.push_back({words("Cost of the event"), {}, card::money(quote.cost, money)});
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

Facts price_facts(const Quote& quote, const PriceList& money) {
  Facts facts{"price", "The price", {}};
  facts.add("rule", "Rule", words(rule_text(quote.terms)));
  facts.add("target", "Asks for", card::money(quote.target, money));
  facts.add("full_prices", "Full prices", number_cell(quote.full_prices, 2));
  facts.add("exact_price", "For one, exactly", card::money(quote.exact_price, money));
  facts.add("price", "PRICE FOR A GUEST",
            money_cell(card::plain(quote.price), money.currency, money.minor_digits));
  return facts;
}

Table guest_table(const Quote& quote, const PriceList& money) {
  Table table{"bill", "The quote",
              {words_column("line", "Line"), figures_column("count", "Guests"),
               figures_column("price", "Price"), figures_column("amount", "Amount")},
              {}, {}, {}};
  for (const QuoteLine& line : quote.lines) {
    table.add({words(line.guests.kind), number_cell(line.guests.count, 2),
               card::money(line.price, money), card::money(line.amount, money)});
  }
  table.totals.push_back({words("Subtotal"), {}, {}, card::money(quote.subtotal, money)});
  if (quote.terms.service) {
    const Charge& service = *quote.terms.service;
    table.totals.push_back({words("Service charge, " + percent_text(service.share, 3) +
                                  (service.taxed ? ", taxed" : ", not taxed")),
                            {}, {}, card::money(quote.service, money)});
  }
  table.totals.push_back({words("Tax, " + percent_text(quote.terms.tax, 3) + " of " +
                                money_text(card::plain(quote.taxed), money.minor_digits)),
                          {}, {}, card::money(quote.tax, money)});
  table.totals.push_back({words("TOTAL"), {}, {}, card::money(quote.total, money)});
  return table;
}

Facts outcome_facts(const Quote& quote, const PriceList& money) {
  Facts facts{"outcome", "What it leaves", {}};
  facts.add("margin", "Margin", card::money(quote.margin, money));
  facts.add("margin_share", "  on the price", percent_cell(quote.margin_share));
  facts.add("mark_up_share", "  on the cost", percent_cell(quote.mark_up_share));
  facts.add("food_share", "Food cost of price", percent_cell(quote.food_share));
  if (quote.break_even) {
    facts.add("break_even", "Breaks even at",
              figure(Rational(*quote.break_even), quote.break_even->str(), "guests"));
  }
  return facts;
}

}  // namespace

Sheet quote_sheet(const Event& event, const Quote& quote, const std::string& currency) {
  PriceList money;
  money.currency = currency;
  money.minor_digits = quote.minor_digits;
  Sheet sheet;
  sheet.kind = "quote";
  sheet.title = "Quote: " + event.name;
  if (event.at) sheet.date = date_text(*event.at);
  sheet.subtitles = {card::guests_text(event)};
  if (const std::string served = card::served_text(event); !served.empty()) {
    sheet.subtitles.push_back(served);
  }
  sheet.subtitles.push_back("all figures in " + currency);
  sheet.add(guest_table(quote, money));
  sheet.add(price_facts(quote, money));
  sheet.add(cost_table(quote, money));
  sheet.add(outcome_facts(quote, money));
  sheet.add(Paragraphs{"note", "",
                       {"The caterer's own sheet: costs and margin are not for the client. What is "
                        "taxable is the law's business where the event takes place."}});
  return sheet;
}

}  // namespace platewright
