// SPDX-License-Identifier: MIT
// Whatever the files of a book say, what is made of them adds up, covers what is needed, and is
// written by every writer.

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <nlohmann/json.hpp>
#include <string>
#include <vector>

#include "csv/read_csv.hpp"
#include "fuzz/files_of_input.hpp"
#include "fuzz/insist.hpp"
#include "platewright/card/cost_sheet.hpp"
#include "platewright/card/kitchen_view.hpp"
#include "platewright/card/order_sheet.hpp"
#include "platewright/card/quote_sheet.hpp"
#include "platewright/card/recipe_card.hpp"
#include "platewright/card/timeline_sheet.hpp"
#include "platewright/card/writers.hpp"
#include "platewright/costing/current_prices.hpp"
#include "platewright/costing/divide_bill.hpp"
#include "platewright/event/event_plan.hpp"
#include "platewright/files/read_book.hpp"

namespace {

using namespace platewright;
using platewright::test::insist;

/// Every writer, and what it wrote is what a reader of its format can read.
void write_in_all_formats(const Sheet& sheet) {
  const std::string text = write_text(sheet);
  insist(text.find_first_of("\r\t\x1b") == std::string::npos, "no control sign is printed");
  write_markdown(sheet);
  insist(write_html(sheet).find("<script") == std::string::npos, "no script in a page");
  insist(nlohmann::json::accept(write_json(sheet)), "JSON is JSON");
  ProblemList problems;
  const auto table = csv::read_csv(write_csv(sheet), "written.csv", ',', problems);
  insist(table.has_value(), "CSV has records of one length");
}

void check_cost(const PlateCost& cost) {
  Money total;
  Rational shares;
  for (const CostLine& line : cost.lines) {
    total += line.cost;
    shares += line.share;
  }
  insist(total == cost.total, "the lines of a plate sum to its total");
  insist(cost.total <= Money() || shares == 1, "the shares of a plate sum to all of it");
}

void check_event_cost(const EventCost& cost) {
  Money food;
  for (const PlateCost& dish : cost.dishes) {
    check_cost(dish);
    food += dish.total;
  }
  insist(food - cost.saved == cost.food, "the dishes sum to the food");
}

/// What is ordered covers the need, and so does a weight as it is printed and typed back in.
void check_line(const OrderLine& line, const KitchenView& view, const UnitTable& units) {
  insist(line.ordered.number >= line.need.number, "an order covers the need");
  insist(sum(line.need, line.left_over) == line.ordered, "what is left is what was too much");
  const bool spare_pack = line.ordered.number - line.purchase.content.number >= line.need.number;
  insist(!spare_pack || (line.purchase.least && line.packs <= *line.purchase.least),
         "one pack fewer would not be enough");
  if (line.need.dimension() != UnitDimension::mass) return;
  const Mass need = to_mass(line.need);
  const std::string printed = view.weight(need, Rounding::up).text;
  insist(to_mass(read_amount(printed, units, MeasuringSystem::us)) >= need,
         "a weight to buy, printed and typed, covers the need");
}

void check_order(const Order& order, const UnitTable& units) {
  const KitchenView view(usual_kitchen(MeasuringSystem::us, units));
  Money total;
  for (const SupplierOrder& supplier : order.suppliers) {
    Money of_supplier;
    for (const OrderLine& line : supplier.lines) {
      check_line(line, view, units);
      of_supplier += line.cost;
    }
    insist(of_supplier == supplier.total, "the lines of a supplier sum to the total");
    total += of_supplier;
  }
  insist(total == order.total, "the suppliers sum to the order");
  insist(order.used_value + order.left_over_value == order.total, "used and left is bought");
}

void check_quote(const Quote& quote) {
  Money lines = quote.minimum_raise;
  for (const QuoteLine& line : quote.lines) lines += line.amount;
  if (quote.missing) lines += quote.missing->amount;
  for (const DiscountLine& line : quote.discounts) lines -= line.amount;
  insist(lines == quote.subtotal, "the lines of a quote sum to its subtotal");
  Money tax;
  for (const TaxLine& line : quote.taxes) tax += line.tax;
  insist(tax == quote.tax, "the taxes sum to the tax");
  const Money before_tax = quote.subtotal + quote.billed_total + quote.service + quote.gratuity;
  insist(quote.total == (quote.terms.prices_include_tax ? before_tax : before_tax + tax),
         "the parts of a quote sum to its total");
  Money paid;
  for (const PayerShare& share : divide_bill(quote)) paid += share.share;
  insist(paid == quote.total, "those who pay pay all of it");
}

/// Runs `work`; it may say that it can't be done.
template <class Work>
void attempt(const Work& work) {
  try {
    work();
  } catch (const Failure&) {
  }
}

void check_event(const Event& event, const Book& book) {
  const std::optional<LocalDay> day = day_of(event);
  const EventPlan plan(Occasion{event, book.recipes, current_prices(book.prices, day)});
  attempt([&] { write_in_all_formats(event_cards(event, plan.production(), book)); });
  attempt([&] {
    const EventCost cost = plan.cost();
    check_event_cost(cost);
    write_in_all_formats(event_cost_sheet(event, cost, plan.prices()));
  });
  attempt([&] {
    const Order order = plan.order();
    check_order(order, book.tables.units);
    write_in_all_formats(order_sheet(event, order, plan.prices()));
  });
  attempt([&] {
    const Timeline timeline = plan.timeline(book.tables.safety);
    for (const TimelineEntry& entry : timeline.entries) {
      insist(!entry.earliest || *entry.earliest <= entry.latest, "nothing ends before it begins");
    }
    write_in_all_formats(timeline_sheet(event, timeline));
  });
  if (!event.has_terms) return;
  attempt([&] {
    const Quote quote = plan.quote();
    check_quote(quote);
    write_in_all_formats(quote_sheet(event, quote, std::nullopt));
    write_in_all_formats(client_quote_sheet(event, quote, {}));
  });
}

void check_recipe(const Recipe& recipe, const Book& book, const PriceList& prices) {
  const ScaledRecipe scaled = scale(recipe, plan_for_factor(recipe, 1, book.recipes), book.recipes);
  attempt([&] { write_in_all_formats(recipe_card(scaled, book)); });
  PlateCosting costing(book.recipes, prices);
  const PlateCost cost = costing.cost(scaled);
  check_cost(cost);
  write_in_all_formats(cost_sheet(cost, prices));
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  static const test::TemporaryFolder folder;
  std::vector<std::string> names = test::files_of_input(data, size, folder.path());
  if (names.empty()) return 0;
  ProblemList problems;
  const auto book = read_book({(folder.path() / names.front()).string()}, problems);
  insist(book.has_value() != problems.has_errors(), "a book, or errors");
  if (!book) return 0;
  const PriceList prices = current_prices(book->prices, std::nullopt);
  for (const auto& [name, recipe] : book->recipes.recipes) {
    attempt([&, &recipe = recipe] { check_recipe(recipe, *book, prices); });
  }
  for (const Event& event : book->events) attempt([&] { check_event(event, *book); });
  return 0;
}
