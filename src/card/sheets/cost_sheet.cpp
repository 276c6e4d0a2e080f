#include "platewright/card/cost_sheet.hpp"

#include "card/sheets/shared.hpp"

namespace platewright {
namespace {

Cell yield_cell(const CostLine& line) {
  const Rational yield = line.served_yield.value_or(line.yield);
  return yield == 1 ? Cell{} : percent_cell(yield);
}

Row cost_row(const CostLine& line, const Cell& cost, const PriceList& prices) {
  Row row;
  row.push_back(words(line.name));
  row.push_back(line.used ? card::amount_cell(*line.used) : words("to taste"));
  row.push_back(line.as_purchased ? card::unit_price_cell(*line.as_purchased, prices) : Cell{});
  row.push_back(yield_cell(line));
  const auto& edible = line.served_price ? line.served_price : line.edible_portion;
  row.push_back(edible ? card::unit_price_cell(*edible, prices) : Cell{});
  row.push_back(line.purchased ? card::amount_cell(*line.purchased) : Cell{});
  row.push_back(line.to_taste || line.free ? words(line.free ? "free" : "in Q") : cost);
  return row;
}

Table cost_table(const PlateCost& cost, const PriceList& prices) {
  Table table;
  table.key = "lines";
  table.columns = {words_column("ingredient", "Ingredient"),
                   figures_column("used", "Used"),
                   figures_column("as_purchased_price", "AP price"),
                   figures_column("yield", "Yield"),
                   figures_column("edible_portion_price", "EP price"),
                   figures_column("as_purchased", "As bought"),
                   figures_column("cost", "Cost")};
  std::vector<Money> costs;
  for (const CostLine& line : cost.lines) costs.push_back(line.cost);
  const std::vector<Cell> cells = card::apportioned_cells(costs, prices);
  std::string part;
  for (std::size_t i = 0; i < cost.lines.size(); ++i) {
    const CostLine& line = cost.lines[i];
    if (line.part != part) table.open_group(line.part);
    part = line.part;
    table.add(cost_row(line, cells[i], prices));
    if (line.credit > Money()) {
      table.notes.push_back(line.name + ": less " + card::money(line.credit, prices).text +
                            " for by-products.");
    }
  }
  table.totals.push_back({words("Total"), {}, {}, {}, {}, {}, card::money(cost.total, prices)});
  if (cost.per_portion) {
    table.totals.push_back(
        {words("A portion"), {}, {}, {}, {}, {}, card::money(*cost.per_portion, prices)});
  }
  return table;
}

void add_facts(const PlateCost& cost, const PriceList& prices, Sheet& sheet) {
  Facts facts{"cost", "", {}};
  if (cost.portions) {
    facts.add("portions", "Portions", number_cell(*cost.portions, 2));
  }
  facts.add("total", "Plate cost, all",
            money_cell(card::plain(cost.total), prices.currency, prices.minor_digits));
  if (cost.per_portion) {
    facts.add("per_portion", "Plate cost, one",
              money_cell(card::plain(*cost.per_portion), prices.currency, prices.minor_digits));
  }
  sheet.add(std::move(facts));
}

const char* const note =
    "AP: as purchased. EP: edible portion; of meat, as served. EP price = AP price / yield. What "
    "is "
    "used, not what must be bought in whole packs.";

}  // namespace

Sheet cost_sheet(const PlateCost& cost, const PriceList& prices) {
  Sheet sheet;
  sheet.kind = "cost";
  sheet.title = "Plate cost: " + cost.recipe;
  add_facts(cost, prices, sheet);
  sheet.add(cost_table(cost, prices));
  sheet.add(Paragraphs{"note", "", {note}});
  return sheet;
}

Sheet event_cost_sheet(const Event& event, const EventCost& cost, const PriceList& prices) {
  Sheet sheet;
  sheet.kind = "event_cost";
  sheet.title = "Plate cost: " + event.name;
  sheet.subtitles = {card::guests_text(event) + ", " + percent_text(event.over) + " over"};
  Table summary;
  summary.key = "dishes";
  summary.title = "The dishes";
  summary.columns = {words_column("dish", "Dish"), figures_column("portions", "Portions"),
                     figures_column("per_portion", "A portion"), figures_column("cost", "Cost")};
  std::vector<Money> costs;
  for (const PlateCost& dish : cost.dishes) costs.push_back(dish.total);
  const std::vector<Cell> cells = card::apportioned_cells(costs, prices);
  for (std::size_t i = 0; i < cost.dishes.size(); ++i) {
    const PlateCost& dish = cost.dishes[i];
    summary.add({words(dish.recipe), dish.portions ? number_cell(*dish.portions, 1) : Cell{},
                 dish.per_portion ? card::money(*dish.per_portion, prices) : Cell{}, cells[i]});
  }
  if (cost.saved > Money()) {
    summary.totals.push_back(
        {words("By-products used, not bought"), {}, {}, card::money(-cost.saved, prices)});
  }
  summary.totals.push_back({words("Food"), {}, {}, card::money(cost.food, prices)});
  sheet.add(std::move(summary));
  std::size_t number = 0;
  for (const PlateCost& dish : cost.dishes) {
    sheet.add(Part{"dish_" + std::to_string(++number), dish.recipe});
    sheet.add(cost_table(dish, prices));
  }
  sheet.add(Part{"remarks", "Remarks"});
  sheet.add(Paragraphs{"note", "", {note}});
  return sheet;
}

}  // namespace platewright
