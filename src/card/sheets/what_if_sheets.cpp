// SPDX-License-Identifier: MIT
#include "platewright/card/what_if_sheets.hpp"

#include <algorithm>

#include "card/sheets/plots.hpp"
#include "card/sheets/quote_parts.hpp"

namespace platewright {

Table what_if_table(const Quote& before, const Quote& after, const PriceList& prices) {
  Table table{"what_if",
              "What if",
              {words_column("line", "Line"), figures_column("before", "Before"),
               figures_column("after", "After"), figures_column("change", "Change")},
              {},
              {},
              {}};
  const auto add = [&](const char* name, const Money& old_value, const Money& new_value) {
    table.add({words(name), card::money(old_value, prices), card::money(new_value, prices),
               card::money(new_value - old_value, prices)});
  };
  add("Food", before.food, after.food);
  add("Cost of the event", before.cost, after.cost);
  add("For one, exactly", before.exact_price, after.exact_price);
  add("Price for a guest", before.price, after.price);
  add("Subtotal", before.subtotal, after.subtotal);
  add("Margin", before.margin, after.margin);
  add("Total", before.total, after.total);
  return table;
}

namespace {

/// What each number of guests leaves at one price.
Table turned_up_table(const std::vector<GuestTableRow>& rows, const PriceList& prices) {
  Table table{"turned_up",
              "",
              {figures_column("guests", "Guests"), figures_column("price", "For a guest"),
               figures_column("subtotal", "Subtotal"), figures_column("cost", "Cost"),
               figures_column("margin", "Margin"), figures_column("margin_share", "of subtotal")},
              {},
              {},
              {}};
  for (const GuestTableRow& row : rows) {
    const Quote& quote = row.turned_up;
    table.title = "So many come, at the price quoted: " + card::money(quote.price, prices).text;
    table.add({number_cell(row.guests, 0), card::money(quote.price, prices),
               card::money(quote.subtotal, prices), card::money(quote.cost, prices),
               card::money(quote.margin, prices), percent_cell(quote.margin_share)});
  }
  if (std::any_of(rows.begin(), rows.end(),
                  [](const GuestTableRow& row) { return row.turned_up.missing.has_value(); })) {
    table.notes.push_back("Who was guaranteed and does not come pays.");
  }
  return table;
}

}  // namespace

Sheet guest_table_sheet(const Event& event, const std::vector<GuestTableRow>& rows,
                        const PriceList& prices) {
  Sheet sheet(SheetKind::guest_table);
  sheet.title = "Price by number of guests: " + event.name;
  sheet.subtitles = {"the same mix of guests; all figures in " + prices.currency.code()};
  Table table{"rows",
              "Priced for so many",
              {figures_column("guests", "Guests"), figures_column("price", "For a guest"),
               figures_column("subtotal", "Subtotal"), figures_column("total", "Total"),
               figures_column("cost", "Cost"), figures_column("margin", "Margin")},
              {},
              {},
              {}};
  for (const GuestTableRow& row : rows) {
    table.add({number_cell(row.guests, 0), card::money(row.quote.price, prices),
               card::money(row.quote.subtotal, prices), card::money(row.quote.total, prices),
               card::money(row.quote.cost, prices), percent_cell(row.quote.margin_share)});
  }
  const std::string& currency = prices.currency.code();
  sheet.add(
      card::drawn(std::move(table), 0, "Guests", {{1, "For a guest"}}, currency + " for a guest"));
  sheet.add(card::drawn(turned_up_table(rows, prices), 0, "Guests", {{2, "Subtotal"}, {3, "Cost"}},
                        currency));
  return sheet;
}

Sheet movers_sheet(const Event& event, const std::vector<PriceMover>& movers,
                   const Rational& change, const PriceList& prices) {
  Sheet sheet(SheetKind::movers);
  sheet.title = "What moves the price: " + event.name;
  sheet.subtitles = {"the exact price for a guest, one thing changed by " + percent_text(change) +
                     " at a time"};
  Table table{"movers",
              "",
              {words_column("ingredient", "Ingredient"), words_column("what", "What changes"),
               figures_column("moved", "Moves the price by")},
              {},
              {},
              {}};
  for (const PriceMover& mover : movers) {
    const bool price = mover.what == Moves::price;
    const Rational moved = card::plain(mover.moved);
    table.add(
        {words(mover.ingredient),
         words((price ? "price up " : "yield down ") + percent_text(change)),
         figure_as(as_decimal(moved, prices.currency.minor_digits() + 1), moved,
                   as_decimal(moved, prices.currency.minor_digits() + 1), prices.currency.code())});
  }
  sheet.add(std::move(table));
  return sheet;
}

Sheet budget_sheet(const Event& event, const Budget& budget, const BudgetAnswer& answer,
                   const Unit& weight, const PriceList& prices) {
  Sheet sheet(SheetKind::budget);
  sheet.title = "What fits the budget: " + event.name;
  sheet.subtitles = {money_cell(card::plain(budget.price), prices.currency).text +
                         " a guest, margin of " + percent_text(budget.margin, 2),
                     "for " + budget.dish};
  Facts facts{"money", "Where it goes", {}};
  facts.add("income", "All guests pay", card::money(answer.income, prices));
  facts.add("food", "The food may cost", card::money(answer.food, prices));
  facts.add("other", "  other than the cut", card::money(answer.other, prices));
  facts.add("for_cut", "  left for the cut", card::money(answer.for_cut, prices));
  facts.add("portions", "Portions of it", number_cell(answer.portions, 2));
  sheet.add(std::move(facts));
  Table table{"choices",
              "Cuts and portions, as served",
              {words_column("cut", "Cut"), figures_column("portion", "Portion"),
               figures_column("cost", "Cost"), words_column("fits", "Fits"),
               figures_column("largest", "Largest that fits")},
              {},
              {},
              {}};
  for (const BudgetChoice& choice : answer.choices) {
    table.add(
        {words(choice.cut), card::amount_cell(to_amount(choice.portion, weight), Rounding::half_up),
         card::money(choice.cost, prices), words(choice.fits ? "yes" : "no"),
         choice.largest ? card::amount_cell(to_amount(*choice.largest, weight), Rounding::down)
                        : Cell{}});
  }
  sheet.add(std::move(table));
  sheet.add(Paragraphs{"note", "", {"Costs are of what is used; whole pieces may come to more."}});
  return sheet;
}

Sheet margin_risk_sheet(const Event& event, const Quote& quote, const MarginRisk& risk,
                        const PriceList& prices) {
  Sheet sheet(SheetKind::margin_risk);
  sheet.title = "How sure is the margin: " + event.name;
  sheet.subtitles = {"at " + money_cell(card::plain(quote.price), prices.currency).text +
                     " a guest"};
  Facts facts{"chance", "", {}};
  facts.add("margin_share", "Margin as quoted", percent_cell(quote.margin_share));
  facts.add("floor", "Floor", percent_cell(risk.question.floor));
  facts.add("chance", "CHANCE TO FALL BELOW", percent_cell(risk.chance, 2));
  facts.add("standard_error", "  error of this estimate", percent_cell(risk.standard_error, 2));
  facts.add("draws", "Draws", number_cell(Rational(risk.question.draws), 0));
  facts.add("seed", "Seed", number_cell(Rational(risk.question.seed), 0));
  std::string certain;
  std::size_t known = 0;
  for (const UncertainCost& cost : risk.costs) {
    if (cost.is_known()) {
      ++known;
    } else {
      certain += (certain.empty() ? "" : ", ") + cost.ingredient;
    }
  }
  facts.add("known_spreads", "Goods with a known spread",
            figure_as(std::to_string(known) + " of " + std::to_string(risk.costs.size()),
                      Rational(known), std::to_string(known)));
  sheet.add(std::move(facts));
  Table table{"spreads",
              "What it rests on: one standard deviation",
              {words_column("ingredient", "Ingredient"), figures_column("cost", "Cost"),
               figures_column("price", "Of price"), figures_column("yield", "Of yield"),
               figures_column("weight", "Of pieces")},
              {},
              {},
              {}};
  for (const UncertainCost& cost : risk.costs) {
    if (!cost.is_known()) continue;
    table.add({words(cost.ingredient), card::money(cost.cost, prices),
               percent_cell(cost.price_deviation), percent_cell(cost.yield_deviation),
               percent_cell(cost.weight_deviation)});
  }
  sheet.add(std::move(table));
  sheet.add(Paragraphs{"note",
                       "",
                       {"Costs move with the weight used, not in whole pieces. The error is that "
                        "of the drawing alone, not of the spreads."}});
  if (!certain.empty()) {
    sheet.add(Paragraphs{
        "certain", "", {"Without a known spread, counted as certain: " + certain + "."}});
  }
  return sheet;
}

}  // namespace platewright
