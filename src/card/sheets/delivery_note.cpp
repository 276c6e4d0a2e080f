// SPDX-License-Identifier: MIT
#include "platewright/card/delivery_note.hpp"

#include <algorithm>
#include <map>

#include "card/sheets/order_amounts.hpp"
#include "card/sheets/order_deliveries.hpp"
#include "card/sheets/shared.hpp"
#include "platewright/event/order_warnings.hpp"
#include "platewright/event/step_warnings.hpp"

namespace platewright {
namespace {

using Lines = std::vector<const OrderLine*>;

/// What the packs weigh together, where that is known; else how many there are.
Amount expected(const OrderLine& line) {
  const auto& weighs = line.purchase.weighs;
  return weighs ? scaled(*weighs, Rational(line.packs)) : line.ordered;
}

std::string blank_for_temperature(const OrderLine& line) {
  if (line.keeping.at == Storage::dry) return {};
  return line.keeping.at == Storage::frozen ? "[ ] frozen" : "_____ F";
}

Table goods_table(const SupplierOrder& order, const Lines& lines) {
  Table table;
  table.key = "goods";
  table.columns = {naming_column("ingredient", "Goods"),
                   words_column("packs", "Ordered"),
                   figures_column("expected", "Expected"),
                   page_column("received", "Received"),
                   page_column("temperature", "Inside"),
                   data_column("supplier"),
                   data_column("deliver_on"),
                   data_column("kept")};
  for (const OrderLine* line : lines) {
    table.add(
        {words(line->ingredient),
         figure_as(card::packs_text(*line), Rational(line->packs), line->packs.str(), "packs"),
         card::amount_cell(expected(*line), Rounding::half_up), words("________"),
         words(blank_for_temperature(*line)), words(order.supplier),
         words(line->deliver_on ? date_text(*line->deliver_on) : ""),
         words(line->keeping.at ? std::string(name_of(*line->keeping.at)) : "")});
  }
  return table;
}

bool any_kept(const Lines& lines, const std::optional<Storage>& storage) {
  return std::any_of(lines.begin(), lines.end(),
                     [&](const OrderLine* line) { return line->keeping.at == storage; });
}

/// `41 F (5 C) or below when received (FDA Food Code 2022, 3-202.11(A))`.
std::string limit_text(const SafetyTable& safety, const char* key, const std::string& otherwise) {
  const auto limit = safety.limit(key);
  if (!limit || !limit->temperature) return otherwise;
  const std::string at = detail::both_scales(limit->temperature->at, Rounding::down);
  return at + " or below when received (" + limit->source + ", " + limit->row + ")" +
         (limit->note.empty() ? "" : ", " + limit->note);
}

/// What is asked of goods that must be cold, by an authority.
Box receiving_box(const Lines& lines, const SafetyTable& safety) {
  Box box{"receiving", "When it comes", {}};
  const bool unknown = any_kept(lines, std::nullopt);
  const bool frozen = any_kept(lines, Storage::frozen);
  if (any_kept(lines, Storage::chilled) || unknown) {
    box.lines.push_back("Chilled food: " +
                        limit_text(safety, "receiving, cold", "as cold as your local code says") +
                        ".");
    box.lines.push_back("Raw eggs in their shells: in air of " +
                        limit_text(safety, "receiving, shell eggs", "what your local code says") +
                        ".");
  }
  if (frozen || unknown) {
    box.lines.emplace_back(
        "Frozen food: frozen, with no sign that it thawed on the way (FDA Food Code 2022, "
        "3-202.11(E) and (F)).");
  }
  if (unknown) {
    std::vector<std::string> names;
    for (const OrderLine* line : lines) {
      if (!line->keeping.at) names.push_back(line->ingredient);
    }
    box.lines.push_back("The book does not say how these are kept: " + detail::names_of(names) +
                        ".");
  }
  if (!box.lines.empty()) {
    box.lines.emplace_back(
        "Send back what is too warm, and put the rest away at once. Local codes come first.");
  }
  return box;
}

void add_delivery(const SupplierOrder& order, const std::optional<LocalTime>& day,
                  const Lines& lines, const SafetyTable& safety, Sheet& sheet) {
  const std::string supplier = order.supplier.empty() ? "No supplier named" : order.supplier;
  const std::string number = std::to_string(
      1 + std::count_if(sheet.blocks.begin(), sheet.blocks.end(),
                        [](const Block& block) { return std::holds_alternative<Part>(block); }));
  sheet.add(
      Part{"delivery_" + number, supplier + (day ? " - " + card::delivery_text(order, *day) : "")});
  if (auto contact = card::contact_lines(order); !contact.empty()) {
    sheet.add(Paragraphs{"contact", "", std::move(contact)});
  }
  sheet.add(goods_table(order, lines));
  if (Box box = receiving_box(lines, safety); !box.lines.empty()) sheet.add(std::move(box));
  sheet.add(Signatures{"signatures", {"Taken in by, at what hour"}});
}

}  // namespace

Sheet delivery_notes_sheet(const std::vector<Event>& events, const Order& order,
                           const SafetyTable& safety) {
  Sheet sheet(SheetKind::delivery_notes);
  sheet.title = "Delivery notes";
  for (const Event& event : events) {
    const std::string served = card::served_text(event);
    sheet.subtitles.push_back("for " + event.name + (served.empty() ? "" : ", " + served));
  }
  for (const SupplierOrder& supplier : order.suppliers) {
    std::map<std::optional<LocalTime>, Lines> by_day;
    for (const OrderLine& line : supplier.lines) by_day[line.deliver_on].push_back(&line);
    for (const auto& [day, lines] : by_day) add_delivery(supplier, day, lines, safety, sheet);
  }
  return sheet;
}

}  // namespace platewright
