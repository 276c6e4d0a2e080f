// SPDX-License-Identifier: MIT
#include "platewright/card/quote_sheet.hpp"

#include "card/sheets/client_notices.hpp"
#include "card/sheets/eating_table.hpp"
#include "card/sheets/paper_parts.hpp"
#include "card/sheets/quote_parts.hpp"
#include "platewright/event/margin_warnings.hpp"

namespace platewright {
namespace {

Table cost_table(const Quote& quote, const PriceList& money) {
  Table table{"costs",
              "What it costs us",
              {words_column("line", "Line"), words_column("working", "Worked out"),
               figures_column("cost", "Cost")},
              {},
              {},
              {}};
  const auto steps = card::cost_steps(quote, money);
  std::vector<Money> costs;
  for (const card::QuoteStep& step : steps) costs.push_back(step.sum);
  const auto cells = card::apportioned_cells(costs, money);
  for (std::size_t i = 0; i < steps.size(); ++i) {
    table.add({words(steps[i].name), words(steps[i].working), cells[i]});
  }
  table.totals.push_back({words("Cost of the event"), {}, card::money(quote.cost, money)});
  return table;
}

Facts price_facts(const Quote& quote, const PriceList& money) {
  Facts facts{"price", "The price", {}};
  facts.add("rule", "Rule", words(card::rule_text(quote.terms)));
  facts.add("target", "Asks for", card::money(quote.target, money));
  facts.add("full_prices", "Full prices", number_cell(quote.full_prices, 2));
  if (quote.step_off > 0) {
    facts.add("step_off", "Off for so many", percent_cell(quote.step_off, 2));
  }
  if (quote.own_prices > Money()) {
    facts.add("own_prices", "Prices of their own", card::money(quote.own_prices, money));
  }
  facts.add("exact_price", "For one, exactly", card::money(quote.exact_price, money));
  if (quote.terms.minimum_price) {
    facts.add("minimum_price", "Minimum for a guest",
              card::money(*quote.terms.minimum_price, money));
  }
  facts.add("price", quote.terms.agreed_price ? "PRICE, AS AGREED" : "PRICE FOR A GUEST",
            money_cell(card::plain(quote.price), money.currency));
  return facts;
}

Facts outcome_facts(const Quote& quote, const std::optional<BreakEven>& break_even,
                    const PriceList& money) {
  Facts facts{"outcome", "What it leaves", {}};
  if (quote.income != quote.subtotal) {
    facts.add("income", card::income_label, card::money(quote.income, money));
  }
  facts.add("margin", "Margin", card::money(quote.margin, money));
  facts.add("margin_share", "  on the price", percent_cell(quote.margin_share));
  facts.add("mark_up_share", "  on the cost", percent_cell(quote.mark_up_share));
  facts.add("food_share", "Food cost of price", percent_cell(quote.food_share));
  if (break_even) {
    const std::string count = break_even->guests.str();
    std::string text = break_even->guests == 1 ? "any number" : "from " + count + " guests";
    if (!break_even->is_fewest) text += " at most";
    facts.add("break_even", "Breaks even",
              figure_as(text, Rational(break_even->guests), count, "guests"));
  }
  return facts;
}

/// What the caterer loses, or lacks to the pricing rule; nothing where it lacks nothing.
std::optional<Box> margin_box(const Quote& quote, const PriceList& money) {
  const auto notice = margin_notice(quote);
  if (!notice) return std::nullopt;
  const auto sum = [&](const Money& value) { return card::money(value, money).text; };
  const bool loss = notice->fault == MarginFault::loss;
  Box box{"margin", loss ? "SOLD AT A LOSS" : "BELOW THE MARGIN ASKED FOR", {}};
  const std::string paid = "By " + cause_of_low_margin(quote) + " the guests pay " +
                           sum(quote.income) +
                           (quote.income == quote.subtotal ? "" : " without tax");
  if (loss) {
    box.lines.push_back(paid + ", and the event costs " + sum(quote.cost) + ": a loss of " +
                        sum(quote.cost - quote.income) + ".");
    if (notice->covering_price) {
      box.lines.push_back("Covers the cost: " + sum(*notice->covering_price) +
                          " for a full price.");
    }
  } else {
    box.lines.push_back(paid + ", and the rule asks for " + sum(quote.target) + ": " +
                        sum(quote.target - quote.income) + " less.");
  }
  if (notice->asked_price && notice->asked_price > notice->covering_price) {
    box.lines.push_back("Leaves what the rule asks for: " + sum(*notice->asked_price) +
                        " for a full price.");
  }
  return box;
}

void add_conditions(const Event& event, const Quote& quote, const PriceList& money, Sheet& sheet) {
  Facts facts = card::condition_facts(event, quote, money);
  if (!facts.facts.empty()) sheet.add(std::move(facts));
}

}  // namespace

Sheet quote_sheet(const Event& event, const Quote& quote,
                  const std::optional<BreakEven>& break_even) {
  const PriceList money{quote.currency};
  Sheet sheet(SheetKind::quote);
  sheet.title = "Quote: " + event.name;
  card::begin_event_sheet(event, sheet);
  if (const std::string paper = card::paper_line(event.paper); !paper.empty()) {
    sheet.subtitles.push_back(paper);
  }
  sheet.subtitles.push_back("all figures in " + quote.currency.code());
  sheet.add(card::bill_table(quote, money));
  sheet.add(price_facts(quote, money));
  sheet.add(cost_table(quote, money));
  sheet.add(outcome_facts(quote, break_even, money));
  if (auto box = margin_box(quote, money)) sheet.add(*std::move(box));
  add_conditions(event, quote, money, sheet);
  sheet.add(Paragraphs{"note",
                       "",
                       {"The caterer's own sheet: costs and margin are not for the client. What is "
                        "taxable is the law's business where the event takes place."}});
  return sheet;
}

Sheet client_quote_sheet(const Event& event, const Quote& quote,
                         const std::vector<DishNotice>& notices) {
  const PriceList money{quote.currency};
  Sheet sheet(SheetKind::client_quote);
  sheet.title = event.name;
  card::begin_event_sheet(event, sheet);
  sheet.subtitles.push_back("all prices in " + quote.currency.code());
  card::add_paper_head(event.paper, sheet);
  Paragraphs menu{"menu", "The menu", {}};
  for (const MenuLine& line : event.menu) {
    menu.texts.push_back(card::dish_text(line.recipe, notices));
  }
  sheet.add(std::move(menu));
  if (Box box = card::undercooked_box(notices); !box.lines.empty()) sheet.add(std::move(box));
  sheet.add(card::allergen_table(notices));
  if (auto eating = card::eating_table(event, notices)) sheet.add(*std::move(eating));
  Facts price{"price", "", {}};
  price.add("price",
            quote.terms.prices_include_tax ? "Price for a guest, with tax" : "Price for a guest",
            money_cell(card::plain(quote.price), money.currency));
  sheet.add(std::move(price));
  card::add_texts("includes", "The price includes", event.paper.includes, sheet);
  sheet.add(card::bill_table(quote, money));
  card::add_payers(quote, money, sheet);
  card::add_payments(quote, money, sheet);
  add_conditions(event, quote, money, sheet);
  card::add_texts("other_terms", "Other terms", event.paper.other_terms, sheet);
  sheet.add(Signatures{"signatures", {"For the client, date", "For the caterer, date"}});
  return sheet;
}

}  // namespace platewright
