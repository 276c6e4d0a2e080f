// SPDX-License-Identifier: MIT
#include "platewright/workbook/event_workbook.hpp"

#include "workbook/cost_page.hpp"
#include "workbook/order_page.hpp"
#include "workbook/quote_page.hpp"

namespace platewright {
namespace {

using namespace pages;

void add_bought(const PlateCost& cost, std::set<std::string>& out) {
  for (const CostLine& line : cost.lines) {
    if (!line.is_recipe && !line.to_taste && !line.free) out.insert(line.name);
  }
}

/// All that has a price here.
std::set<std::string> goods_of(const CostedEvent& costed, const Order& order) {
  std::set<std::string> out;
  for (const PlateCost& batch : costed.batches) add_bought(batch, out);
  for (const PlateCost& dish : costed.cost.dishes) add_bought(dish, out);
  for (const SupplierOrder& supplier : order.suppliers) {
    for (const OrderLine& line : supplier.lines) out.insert(line.ingredient);
  }
  for (const Need& need : costed.needs) {
    if (need.from_by_products) out.insert(need.ingredient);
  }
  return out;
}

}  // namespace

Workbook event_workbook(const EventPlan& plan) {
  const CostedEvent costed = pages::costed(plan);
  const Order order = plan.order();
  Page prices("Prices", {34, 22, 18, 9, 9, 12, 9, 9, 7, 9, 13, 10, 15});
  const PricePlaces places =
      write_prices(prices, plan.event(), plan.prices(), goods_of(costed, order));
  Page costs("Cost", {34, 18, 11, 9, 21, 11, 12, 15, 13, 11, 12, 12});
  const CellPlace food = write_costs(costs, plan, costed, places);
  Page to_buy("Order", {34, 10, 13, 10, 9, 12, 9, 8, 10, 10, 12, 12, 11, 12, 12, 12, 10, 10, 15});
  write_order(to_buy, plan, order, places);
  Workbook out{plan.event().name, plan.prices().currency, {}};
  out.sheets.push_back(std::move(prices).sheet());
  out.sheets.push_back(std::move(costs).sheet());
  out.sheets.push_back(std::move(to_buy).sheet());
  if (!places.terms) return out;
  Page quote("Quote", {34, 9, 11, 12, 9, 13, 11, 13, 13});
  write_quote(quote, plan, plan.quote(), places, food);
  out.sheets.push_back(std::move(quote).sheet());
  return out;
}

}  // namespace platewright
