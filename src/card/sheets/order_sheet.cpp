#include "platewright/card/order_sheet.hpp"

#include "card/sheets/shared.hpp"
#include "platewright/costing/currency.hpp"

namespace platewright {
namespace {

std::string packs_text(const OrderLine& line) {
  const std::string count = line.packs.str() + " \u00D7 ";
  if (line.purchase.by_the_piece) {
    return count + "about " + as_short_decimal(line.purchase.content.number, 2) + " " +
           line.purchase.content.unit.symbol_for(line.purchase.content.number);
  }
  return count + line.purchase.pack_text;
}

std::string joined(const std::vector<std::string>& names) {
  std::string out;
  for (const std::string& name : names) out += (out.empty() ? "" : ", ") + name;
  return out;
}

/// `2 lb in store, 1.5 lb left over from cuts`, or nothing.
std::string there_text(const std::optional<Amount>& in_store, const std::optional<Amount>& left) {
  std::string out;
  if (in_store) out = card::amount_cell(*in_store).text + " in store";
  if (left) {
    out += (out.empty() ? "" : ", ") + card::amount_cell(*left).text + " left over from cuts";
  }
  return out;
}

Row order_row(const OrderLine& line, const Cell& cost) {
  return {words("[ ]"),
          figure_as(packs_text(line), Rational(line.packs), line.packs.str(), "packs"),
          words(line.ingredient),
          card::amount_cell(line.need),
          card::amount_cell(line.left_over),
          cost};
}

Table supplier_table(const SupplierOrder& order, std::size_t number, const PriceList& prices) {
  Table table;
  table.key = "supplier_" + std::to_string(number);
  table.title = order.supplier.empty() ? "No supplier named" : order.supplier;
  if (order.order_by) {
    table.title +=
        " - order by " + weekday_text(*order.order_by) + " " + date_text(*order.order_by);
  }
  table.columns = {words_column("done", ""),
                   words_column("packs", "Buy"),
                   words_column("ingredient", "Of"),
                   figures_column("need", "Needed"),
                   figures_column("left_over", "Left"),
                   figures_column("cost", "Cost")};
  std::vector<Money> costs;
  for (const OrderLine& line : order.lines) costs.push_back(line.cost);
  const auto cells = card::apportioned_cells(costs, prices);
  for (std::size_t i = 0; i < order.lines.size(); ++i)
    table.add(order_row(order.lines[i], cells[i]));
  table.totals.push_back({{}, {}, words("Total"), {}, {}, card::money(order.total, prices)});
  if (order.deposit > Money()) {
    table.totals.push_back({{},
                            {},
                            words("Deposit on containers, which comes back"),
                            {},
                            {},
                            card::money(order.deposit, prices)});
  }
  if (order.below_minimum > Money()) {
    table.notes.push_back("Below this supplier's minimum order by " +
                          card::money(order.below_minimum, prices).text + ".");
  }
  for (const OrderLine& line : order.lines) {
    if (const auto& foreign = line.purchase.written_in) {
      const Rational pack = card::plain(line.purchase.price) / foreign->rate;
      table.notes.push_back(line.ingredient + ": " +
                            money_text(pack, minor_digits_of(foreign->code)) + " " + foreign->code +
                            (line.purchase.by_the_piece ? " a piece, " : " a pack, ") +
                            card::rate_text(*foreign, prices) + ".");
    }
    if (const std::string there = there_text(line.in_store, line.from_by_products);
        !there.empty()) {
      table.notes.push_back(line.ingredient + ": " + there + " taken off already.");
    }
  }
  return table;
}

/// What is needed and not on a list, each with a word on why.
std::vector<std::string> have_ready(const Order& order) {
  std::vector<std::string> out;
  for (const Need& need : order.all_there) {
    out.push_back(need.ingredient + ", " + there_text(need.in_store, need.from_by_products) +
                  ", for " + joined(need.used_by));
  }
  for (const Need& need : order.have_ready) {
    out.push_back(need.purchased
                      ? need.ingredient + ", more than is ordered: some of it is to taste"
                      : need.ingredient + ", to taste, for " + joined(need.used_by));
  }
  for (const Need& need : order.not_ordered) {
    out.push_back(need.ingredient + (need.free ? ", free, for " : ", without a price, for ") +
                  joined(need.used_by));
  }
  return out;
}

void add_order(const Order& order, const PriceList& prices, Sheet& sheet) {
  std::size_t number = 0;
  for (const SupplierOrder& supplier : order.suppliers) {
    sheet.add(supplier_table(supplier, ++number, prices));
  }
  Facts sums{"sums", "Together", {}};
  sums.add("total", "To pay",
           money_cell(card::plain(order.total), prices.currency, prices.minor_digits));
  sums.add("used", "  of it used", card::money(order.used_value, prices));
  sums.add("left_over", "  of it left over", card::money(order.left_over_value, prices));
  if (order.deposit > Money()) {
    sums.add("deposit", "Deposits", card::money(order.deposit, prices));
  }
  sheet.add(std::move(sums));
  if (auto ready = have_ready(order); !ready.empty()) {
    sheet.add(Paragraphs{"have_ready", "Have ready", std::move(ready)});
  }
}

}  // namespace

Sheet order_sheet(const Event& event, const Order& order, const PriceList& prices) {
  Sheet sheet;
  sheet.kind = "order";
  sheet.title = "Order: " + event.name;
  sheet.subtitles = {card::guests_text(event) + ", " + percent_text(event.over) + " over"};
  if (const std::string served = card::served_text(event); !served.empty()) {
    sheet.subtitles.push_back(served);
  }
  add_order(order, prices, sheet);
  return sheet;
}

Sheet order_sheet(const std::vector<Event>& events, const Order& order, const PriceList& prices) {
  if (events.size() == 1) return order_sheet(events.front(), order, prices);
  Sheet sheet;
  sheet.kind = "order";
  sheet.title = "Order for " + std::to_string(events.size()) + " events";
  for (const Event& event : events) {
    sheet.subtitles.push_back(event.name + ": " + card::guests_text(event) + ", " +
                              percent_text(event.over) + " over");
  }
  add_order(order, prices, sheet);
  return sheet;
}

}  // namespace platewright
