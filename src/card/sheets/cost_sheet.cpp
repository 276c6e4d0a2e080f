// SPDX-License-Identifier: MIT
#include "platewright/card/cost_sheet.hpp"

#include "card/sheets/shared.hpp"
#include "platewright/costing/round_money.hpp"

namespace platewright {
namespace {

/// Shares that sum to 100 % as they are printed.
std::vector<Cell> share_cells(const std::vector<CostLine>& lines) {
  std::vector<Rational> exact;
  for (const CostLine& line : lines) exact.push_back(line.share * 100);
  const std::vector<Rational> rounded = apportion(exact, fraction(1, 10));
  std::vector<Cell> out;
  for (std::size_t i = 0; i < exact.size(); ++i) {
    out.push_back(figure(exact[i], as_decimal(rounded[i], 1), "%"));
  }
  return out;
}

/// The decimals of an amount as bought.
constexpr unsigned purchased_places = 3;

/// What is bought as it is used is one figure in both columns.
Cell used_cell(const CostLine& line) {
  if (!line.used) return words("to taste");
  const bool as_bought = line.purchased && line.purchased->unit == line.used->unit &&
                         line.purchased->number == line.used->number;
  return card::amount_cell(*line.used, Rounding::half_up, as_bought ? purchased_places : 2);
}

Row cost_row(const CostLine& line, const Cell& cost, const Cell& share, const PriceList& prices) {
  const bool costed = !line.to_taste && !line.free;
  return {words(line.name),
          used_cell(line),
          line.purchased ? card::amount_cell(*line.purchased, Rounding::half_up, purchased_places)
                         : Cell{},
          line.as_purchased ? card::paid_price_cell(*line.as_purchased, prices) : Cell{},
          costed ? cost : words(line.free ? "free" : "in Q"),
          costed ? share : Cell{}};
}

Table cost_table(const PlateCost& cost, const PriceList& prices) {
  Table table;
  table.key = "lines";
  table.columns = {naming_column("ingredient", "Ingredient"),
                   figures_column("used", "Used"),
                   figures_column("as_purchased", "As bought"),
                   figures_column("as_purchased_price", "AP price"),
                   figures_column("cost", "Cost"),
                   figures_column("share", "Share")};
  std::vector<Money> costs;
  for (const CostLine& line : cost.lines) costs.push_back(line.cost);
  const std::vector<Cell> cells = card::apportioned_cells(costs, prices);
  const std::vector<Cell> shares = share_cells(cost.lines);
  std::string part;
  for (std::size_t i = 0; i < cost.lines.size(); ++i) {
    const CostLine& line = cost.lines[i];
    if (line.part != part) table.open_group(line.part);
    part = line.part;
    table.add(cost_row(line, cells[i], shares[i], prices));
    if (line.credit > Money()) {
      table.notes.push_back(line.name + ": less " + card::money(line.credit, prices).text +
                            " for by-products.");
    }
    if (line.written_in) {
      table.notes.push_back(line.name + ": priced in " + line.written_in->currency.code() + ", " +
                            card::rate_text(*line.written_in, prices) + ".");
    }
  }
  table.totals.push_back({words("Total"),
                          {},
                          {},
                          {},
                          card::money(cost.total, prices),
                          cost.total > Money() ? percent_cell(1) : Cell{}});
  if (cost.per_portion) {
    table.totals.push_back(
        {words("A portion"), {}, {}, {}, card::money(*cost.per_portion, prices), {}});
  }
  return table;
}

/// What lies between the price paid and the price of what is eaten; only lines that lose or gain
/// something on the way, or have a credit.
Table edible_table(const PlateCost& cost, const PriceList& prices) {
  Table table;
  table.key = "edible_portions";
  table.columns = {words_column("ingredient", "Edible portion"),
                   figures_column("as_purchased_price", "AP price"),
                   figures_column("yield", "Yield"),
                   figures_column("cost_factor", "Factor"),
                   figures_column("edible_portion_price", "EP price"),
                   words_column("yield_of", "Yield by")};
  for (const CostLine& line : cost.lines) {
    const std::optional<UnitPrice>& edible =
        line.served_price ? line.served_price : line.edible_portion;
    if (line.is_recipe || !edible || !line.cost_factor || *line.cost_factor == 1) continue;
    table.add({words(line.name), card::paid_price_cell(*line.as_purchased, prices),
               percent_cell(line.served_yield.value_or(line.yield)),
               number_cell(*line.cost_factor, 3), card::unit_price_cell(*edible, prices),
               words(line.yield_name)});
  }
  return table;
}

void add_tables(const PlateCost& cost, const PriceList& prices, Sheet& sheet) {
  sheet.add(cost_table(cost, prices));
  if (Table edible = edible_table(cost, prices); !edible.groups.empty()) {
    sheet.add(std::move(edible));
  }
}

void add_facts(const PlateCost& cost, const PriceList& prices, Sheet& sheet) {
  Facts facts{"cost", "", {}};
  if (cost.portions) {
    facts.add("portions", "Portions", number_cell(*cost.portions, 2));
  }
  facts.add("total", "Plate cost, all", money_cell(card::plain(cost.total), prices.currency));
  if (cost.per_portion) {
    facts.add("per_portion", "Plate cost, one",
              money_cell(card::plain(*cost.per_portion), prices.currency));
  }
  sheet.add(std::move(facts));
}

/// `whose` is what the plate belongs to: a portion, a guest.
void add_plate_price(const std::optional<PlatePrice>& price, const std::string& whose,
                     const PriceList& prices, Sheet& sheet) {
  if (!price) return;
  Facts facts{"plate_price", "The food against the price, for " + whose, {}};
  const PlatePriceQuestion& question = price->question;
  facts.add("plate", "Plate cost", card::money(price->plate, prices));
  facts.add("q_factor", "Q factor, " + percent_text(question.q_factor),
            card::money(price->q, prices));
  facts.add("with_q", "Plate cost with Q", card::money(price->with_q, prices));
  if (question.price) {
    facts.add("price", "At a price of", card::money(*question.price, prices));
    facts.add("food_share", "FOOD COST", percent_cell(*price->food_share));
    facts.add("left", "Left for all else", card::money(*price->left, prices));
  }
  if (question.food_share) {
    facts.add("wanted_share", "Food cost wanted", percent_cell(*question.food_share));
    facts.add("wanted_price", "PRICE, exactly", card::money(*price->price, prices));
  }
  sheet.add(std::move(facts));
}

/// What the order of this event is charged for beside its goods; nothing where it is not.
void add_deliveries(const EventCost& cost, const PriceList& prices, Sheet& sheet) {
  if (cost.deliveries.empty()) return;
  Table table{"deliveries",
              "Deliveries, by the order of this event",
              {words_column("supplier", "Supplier"), figures_column("deliveries", "Times"),
               figures_column("charge", "For each"), figures_column("cost", "Cost")},
              {},
              {},
              {}};
  std::vector<Money> costs;
  for (const DeliveryCost& supplier : cost.deliveries) costs.push_back(supplier.cost());
  const auto cells = card::apportioned_cells(costs, prices);
  for (std::size_t i = 0; i < cost.deliveries.size(); ++i) {
    const DeliveryCost& supplier = cost.deliveries[i];
    table.add({words(supplier.supplier), number_cell(Rational(supplier.deliveries), 0),
               card::money(supplier.charge, prices), cells[i]});
  }
  const Money all = cost_of_deliveries(cost.deliveries);
  table.totals.push_back({words("Deliveries"), {}, {}, card::money(all, prices)});
  table.totals.push_back(
      {words("Food and deliveries"), {}, {}, card::money(cost.food + all, prices)});
  sheet.add(std::move(table));
}

const char* const note =
    "AP: as purchased. EP: edible portion; of meat, as served. Factor: EP price / AP price, the "
    "cost factor. EP price = (AP price - credit for by-products) / yield. What is used, not what "
    "must be bought in whole packs.";

}  // namespace

Sheet cost_sheet(const PlateCost& cost, const PriceList& prices,
                 const std::optional<PlatePrice>& price) {
  Sheet sheet(SheetKind::cost);
  sheet.title = "Plate cost: " + cost.recipe;
  add_facts(cost, prices, sheet);
  add_tables(cost, prices, sheet);
  add_plate_price(price, "a portion", prices, sheet);
  sheet.add(Paragraphs{"note", "", {note}});
  return sheet;
}

Sheet event_cost_sheet(const Event& event, const EventCost& cost, const PriceList& prices,
                       const std::optional<PlatePrice>& price) {
  Sheet sheet(SheetKind::event_cost);
  sheet.title = "Plate cost: " + event.name;
  sheet.subtitles = {card::guests_text(event) + ", " + percent_text(event.over) + " over"};
  Table summary;
  summary.key = "dishes";
  summary.title = "The dishes";
  summary.columns = {words_column("dish", "Dish"), figures_column("portions", "Portions"),
                     figures_column("per_portion", "A portion"), figures_column("cost", "Cost")};
  // Each dish as its own part below prints it.
  Money printed;
  const Money minor = minor_unit(prices.currency);
  const auto add = [&](const Money& amount) {
    printed += round_money(amount, minor, Rounding::half_up);
    return card::money(amount, prices);
  };
  for (const PlateCost& dish : cost.dishes) {
    summary.add({words(dish.recipe), dish.portions ? number_cell(*dish.portions, 1) : Cell{},
                 dish.per_portion ? card::money(*dish.per_portion, prices) : Cell{},
                 add(dish.total)});
  }
  if (cost.saved > Money()) {
    summary.totals.push_back({words("By-products used, not bought"), {}, {}, add(-cost.saved)});
  }
  summary.totals.push_back({words("Food"), {}, {}, card::money(cost.food, prices)});
  if (printed != round_money(cost.food, minor, Rounding::half_up)) {
    summary.notes.push_back(
        "Food is the sum of the exact costs, rounded once; as they are printed "
        "they add up to " +
        card::money(printed, prices).text + ".");
  }
  sheet.add(std::move(summary));
  add_deliveries(cost, prices, sheet);
  add_plate_price(price, "a guest at the full price", prices, sheet);
  std::size_t number = 0;
  for (const PlateCost& dish : cost.dishes) {
    sheet.add(Part{"dish_" + std::to_string(++number), dish.recipe});
    add_tables(dish, prices, sheet);
  }
  sheet.add(Part{"remarks", "Remarks"});
  sheet.add(Paragraphs{"note", "", {note}});
  return sheet;
}

}  // namespace platewright
