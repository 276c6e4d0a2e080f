// SPDX-License-Identifier: MIT
#include "platewright/card/order_sheet.hpp"

#include <algorithm>
#include <map>
#include <optional>
#include <set>
#include <string>

#include "card/sheets/order_amounts.hpp"
#include "card/sheets/order_deliveries.hpp"
#include "card/sheets/shared.hpp"
#include "platewright/event/order_warnings.hpp"
#include "platewright/quantity/currency.hpp"

namespace platewright {
namespace {

std::string joined(const std::vector<std::string>& names) {
  std::string out;
  for (const std::string& name : names) out += (out.empty() ? "" : ", ") + name;
  return out;
}

/// `2 lb in store, 1.5 lb left over from cuts`, or nothing.
std::string there_text(const std::optional<Amount>& in_store, const std::optional<Amount>& left) {
  std::string out;
  if (in_store) out = card::amount_cell(*in_store, Rounding::down).text + " in store";
  if (left) {
    out += (out.empty() ? "" : ", ") + card::amount_cell(*left, Rounding::down).text +
           " left over from cuts";
  }
  return out;
}

Cell day_data(const std::optional<LocalTime>& day) {
  return words(day ? date_text(*day) : "");
}

Cell hour_data(const Supplier& terms) {
  const bool known = terms.cut_off && terms.cut_off->hour;
  return words(known ? clock_text(LocalTime(*terms.cut_off->hour)) : "");
}

Row order_row(const SupplierOrder& order, const OrderLine& line, const Cell& cost,
              const PriceList& prices) {
  const auto [need, left] = card::needed_and_left(line);
  const Purchase& purchase = line.purchase;
  return {words("[ ]"),
          figure_as(card::packs_text(line), Rational(line.packs), line.packs.str(), "packs"),
          words(line.ingredient),
          need,
          left,
          cost,
          words(purchase.supplier),
          day_data(line.order_by),
          day_data(line.deliver_by),
          words(purchase.by_the_piece ? "a piece" : purchase.pack_text),
          card::amount_cell(purchase.content, Rounding::half_up, 3),
          card::money(purchase.price, prices),
          day_data(line.deliver_on),
          hour_data(order.terms),
          words(line.keeping.at ? std::string(name_of(*line.keeping.at)) : "")};
}

/// `the butcher - order by Mon 2027-10-04, there by Fri 2027-10-08`.
std::string supplier_title(const SupplierOrder& order) {
  std::string out = order.supplier.empty() ? "No supplier named" : order.supplier;
  std::string days = card::order_by_text(order);
  const auto& day = order.lines.front().deliver_on;
  if (day && order.deliveries.size() == 1) {
    days += (days.empty() ? "" : ", ") + card::delivery_text(order, *day);
  }
  return days.empty() ? out : out + " - " + days;
}

/// The lines by the day on which they have to be there, each day under its heading where there are
/// several.
void add_order_lines(const SupplierOrder& order, bool one_day, const PriceList& prices,
                     Table& table) {
  std::vector<Money> costs;
  for (const OrderLine& line : order.lines) costs.push_back(line.cost);
  const auto cells = card::apportioned_cells(costs, prices);
  std::map<std::optional<LocalTime>, std::vector<std::size_t>> by_day;
  for (std::size_t i = 0; i < order.lines.size(); ++i) {
    by_day[order.lines[i].deliver_on].push_back(i);
  }
  for (const auto& [day, lines] : by_day) {
    if (day && !one_day) table.open_group(card::delivery_text(order, *day));
    if (!day && !one_day) table.open_group("no delivery day known");
    for (const std::size_t i : lines) {
      table.add(order_row(order, order.lines[i], cells[i], prices));
    }
  }
}

void add_totals(const SupplierOrder& order, const PriceList& prices, Table& table) {
  const auto add = [&](const std::string& label, const Money& amount) {
    table.totals.push_back(
        {{}, {}, words(label), {}, {}, card::money(amount, prices), words(order.supplier)});
  };
  add("Total", order.total);
  const std::size_t deliveries = order.deliveries.size();
  if (order.delivery_charges > Money()) {
    add(deliveries == 1 ? "Delivery" : std::to_string(deliveries) + " deliveries",
        order.delivery_charges);
  }
  if (order.deposit > Money()) add("Deposit, comes back", order.deposit);
  if (order.deposit + order.delivery_charges == Money()) return;
  add("To pay", order.total + order.deposit + order.delivery_charges);
}

/// Goods that stand on several lines: events of several days each buy at the price of their own.
std::set<std::string> bought_in_parts(const Order& order) {
  std::set<std::string> seen;
  std::set<std::string> out;
  for (const SupplierOrder& supplier : order.suppliers) {
    for (const OrderLine& line : supplier.lines) {
      if (!seen.insert(line.ingredient).second) out.insert(line.ingredient);
    }
  }
  return out;
}

/// `beans: 2 packs at 14.00, the price since 2027-06-01`.
std::string part_text(const OrderLine& line, const PriceList& prices) {
  const Purchase& purchase = line.purchase;
  std::string out = line.ingredient + ": " + line.packs.str() +
                    (purchase.by_the_piece ? " of a piece at " : " of a pack at ") +
                    card::money(purchase.price, prices).text;
  if (purchase.on) out += ", the price since " + date_text(LocalTime(*purchase.on));
  return out + ".";
}

Table supplier_table(const SupplierOrder& order, std::size_t number,
                     const std::set<std::string>& in_parts, const PriceList& prices) {
  const bool one_day = order.deliveries.size() == 1;
  Table table;
  table.key = "supplier_" + std::to_string(number);
  table.array = "lines";
  if (card::contact_lines(order).empty()) table.title = supplier_title(order);
  table.columns = {page_column("done", ""),
                   words_column("packs", "Buy"),
                   naming_column("ingredient", "Of"),
                   figures_column("need", "Needed"),
                   figures_column("left_over", "Left"),
                   figures_column("cost", "Cost"),
                   data_column("supplier"),
                   data_column("order_by"),
                   data_column("deliver_by"),
                   data_column("pack"),
                   data_column("content"),
                   data_column("price"),
                   data_column("deliver_on"),
                   data_column("order_by_hour"),
                   data_column("kept")};
  add_order_lines(order, one_day, prices, table);
  add_totals(order, prices, table);
  for (std::string& note : card::waiting_notes(order)) table.notes.push_back(std::move(note));
  for (const OrderLine& line : order.lines) {
    if (in_parts.count(line.ingredient) > 0) table.notes.push_back(part_text(line, prices));
    if (const auto& foreign = line.purchase.written_in) {
      const Rational pack = card::plain(line.purchase.price) / foreign->rate;
      table.notes.push_back(line.ingredient + ": " + money_text(pack, foreign->currency) + " " +
                            foreign->currency.code() +
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

void add_order(const Order& order, const PriceList& prices, const std::optional<LocalTime>& ordered,
               Sheet& sheet) {
  if (Box box = card::order_box(order, prices, ordered); !box.lines.empty()) {
    sheet.add(std::move(box));
  }
  std::size_t number = 0;
  const std::set<std::string> in_parts = bought_in_parts(order);
  for (const SupplierOrder& supplier : order.suppliers) {
    ++number;
    if (auto contact = card::contact_lines(supplier); !contact.empty()) {
      sheet.add(Paragraphs{"contact_" + std::to_string(number), supplier_title(supplier),
                           std::move(contact)});
    }
    sheet.add(supplier_table(supplier, number, in_parts, prices));
  }
  const auto with_currency = [&](const Money& amount) {
    return money_cell(card::plain(amount), prices.currency);
  };
  const bool more_to_pay = order.to_pay() > order.total;
  Facts sums{"sums", "Together", {}};
  sums.add("total", more_to_pay ? "Goods" : "To pay", with_currency(order.total));
  sums.add("used", "  of it used", card::money(order.used_value, prices));
  sums.add("left_over", "  of it left over", card::money(order.left_over_value, prices));
  if (order.delivery_charges > Money()) {
    sums.add("deliveries", "Deliveries", card::money(order.delivery_charges, prices));
  }
  if (order.deposit > Money()) {
    sums.add("deposit", "Deposits, which come back", card::money(order.deposit, prices));
  }
  if (more_to_pay) sums.add("to_pay", "To pay", with_currency(order.to_pay()));
  sheet.add(std::move(sums));
  if (auto ready = have_ready(order); !ready.empty()) {
    sheet.add(Paragraphs{"have_ready", "Have ready", std::move(ready)});
  }
}

}  // namespace

Sheet order_sheet(const Event& event, const Order& order, const PriceList& prices,
                  const std::optional<LocalTime>& ordered) {
  Sheet sheet(SheetKind::order);
  sheet.title = "Order: " + event.name;
  sheet.subtitles = {card::guests_text(event) + ", " + percent_text(event.over) + " over"};
  if (const std::string served = card::served_text(event); !served.empty()) {
    sheet.subtitles.push_back(served);
  }
  add_order(order, prices, ordered, sheet);
  return sheet;
}

Sheet order_sheet(const std::vector<Event>& events, const Order& order, const PriceList& prices,
                  const std::optional<LocalTime>& ordered) {
  if (events.size() == 1) return order_sheet(events.front(), order, prices, ordered);
  Sheet sheet(SheetKind::order);
  sheet.title = "Order for " + std::to_string(events.size()) + " events";
  for (const Event& event : events) {
    sheet.subtitles.push_back(event.name + ": " + card::guests_text(event) + ", " +
                              percent_text(event.over) + " over");
  }
  add_order(order, prices, ordered, sheet);
  return sheet;
}

}  // namespace platewright
