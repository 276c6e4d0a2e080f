#include "platewright/card/order_sheet.hpp"

#include "card/sheets/shared.hpp"

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
    table.title += " - order by " + weekday_text(*order.order_by) + " " + date_text(*order.order_by);
  }
  table.columns = {words_column("done", ""), words_column("packs", "Buy"),
                   words_column("ingredient", "Of"), figures_column("need", "Needed"),
                   figures_column("left_over", "Left"), figures_column("cost", "Cost")};
  std::vector<Money> costs;
  for (const OrderLine& line : order.lines) costs.push_back(line.cost);
  const auto cells = card::apportioned_cells(costs, prices);
  for (std::size_t i = 0; i < order.lines.size(); ++i) table.add(order_row(order.lines[i], cells[i]));
  table.totals.push_back({{}, {}, words("Total"), {}, {}, card::money(order.total, prices)});
  return table;
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
  std::size_t number = 0;
  for (const SupplierOrder& supplier : order.suppliers) {
    sheet.add(supplier_table(supplier, ++number, prices));
  }
  Facts sums{"sums", "Together", {}};
  sums.add("total", "To pay", money_cell(card::plain(order.total), prices.currency, prices.minor_digits));
  sums.add("used", "  of it used", card::money(order.used_value, prices));
  sums.add("left_over", "  of it left over", card::money(order.left_over_value, prices));
  sheet.add(std::move(sums));
  std::vector<std::string> ready;
  for (const Need& need : order.have_ready) {
    ready.push_back(need.ingredient + ", to taste, for " + joined(need.used_by));
  }
  for (const Need& need : order.not_ordered) {
    ready.push_back(need.ingredient + (need.free ? ", free, for " : ", without a price, for ") +
                    joined(need.used_by));
  }
  if (!ready.empty()) sheet.add(Paragraphs{"have_ready", "Have ready", ready});
  return sheet;
}

}  // namespace platewright
