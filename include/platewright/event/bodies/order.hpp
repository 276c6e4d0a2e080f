// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/event/order.hpp.

#include <algorithm>
#include <map>
#include <utility>

#include "platewright/event/order.hpp"

namespace platewright {

PLATEWRIGHT_BODY int OrderLine::days_early() const {
  if (!deliver_by || !deliver_on) return 0;
  return static_cast<int>((day_part(*deliver_by) - day_part(*deliver_on)).count());
}

PLATEWRIGHT_BODY OrderLine order_line(const Need& need, const Amount& needed,
                                      const Purchase& purchase) {
  check_content(purchase);
  const Amount in_packs = in_unit(needed, purchase.content.unit);
  Integer packs = ceiling_of(in_packs.number / purchase.content.number);
  if (purchase.least && packs < *purchase.least) packs = *purchase.least;
  const Amount ordered = scaled(purchase.content, Rational(packs));
  const Amount left_over{ordered.number - in_packs.number, in_packs.unit};
  OrderLine out{need.ingredient, in_packs, purchase, packs, ordered, left_over};
  out.used_by = need.used_by;
  out.cost = purchase.price * Rational(packs);
  out.deposit = purchase.deposit * Rational(packs);
  out.from_by_products = need.from_by_products;
  out.in_store = need.in_store;
  out.left_over_value = price_of(left_over, purchase);
  if (need.first_used) out.deliver_by = delivery_day(*need.first_used);
  out.keeping = need.keeping;
  return out;
}

namespace detail {

PLATEWRIGHT_BODY void add_line(OrderLine line, SupplierOrder& supplier, Order& out) {
  supplier.supplier = line.purchase.supplier;
  supplier.total += line.cost;
  supplier.deposit += line.deposit;
  out.total += line.cost;
  out.deposit += line.deposit;
  out.left_over_value += line.left_over_value;
  supplier.lines.push_back(std::move(line));
}

/// The last day for each line, or the first of these days for all of them.
PLATEWRIGHT_BODY void plan_delivery_days(SupplierOrder& order) {
  std::optional<LocalTime> first;
  for (OrderLine& line : order.lines) {
    if (line.deliver_by) line.deliver_on = last_delivery(order.terms, *line.deliver_by);
    keep_earlier(first, line.deliver_on);
  }
  for (OrderLine& line : order.lines) {
    if (order.terms.one_delivery && line.deliver_on) line.deliver_on = first;
  }
}

/// A supplier comes for each of them, so that each is held to its minimum.
PLATEWRIGHT_BODY std::vector<Delivery> deliveries_of(const SupplierOrder& order) {
  std::map<std::optional<LocalTime>, Money> goods;
  for (const OrderLine& line : order.lines) goods[line.deliver_on] += line.cost;
  std::vector<Delivery> out;
  for (const auto& [day, cost] : goods) {
    out.push_back({day, cost, std::max(Money(), order.terms.minimum - cost)});
  }
  return out;
}

PLATEWRIGHT_BODY void plan_deliveries(SupplierOrder& order, const Suppliers& suppliers) {
  order.terms = supplier_called(order.supplier, suppliers);
  plan_delivery_days(order);
  for (OrderLine& line : order.lines) {
    if (line.deliver_on) line.order_by = last_order(order.terms, line.purchase, *line.deliver_on);
    keep_earlier(order.deliver_by, line.deliver_by);
    keep_earlier(order.order_by, line.order_by);
  }
  order.deliveries = deliveries_of(order);
  order.delivery_charges =
      order.terms.delivery_charge * Rational(static_cast<std::int64_t>(order.deliveries.size()));
  for (const Delivery& delivery : order.deliveries) order.below_minimum += delivery.below_minimum;
}

}  // namespace detail

PLATEWRIGHT_BODY Order make_order(const std::vector<Need>& needs, const Suppliers& described) {
  Order out;
  std::map<std::string, SupplierOrder> suppliers;
  for (const Need& need : needs) {
    if (need.to_taste) out.have_ready.push_back(need);
    if (!need.purchased) {
      if (!need.used.empty()) out.not_ordered.push_back(need);
      continue;
    }
    if (need.purchased->number == 0) continue;
    const auto to_buy = need.to_buy();
    if (!to_buy) {
      out.all_there.push_back(need);
      continue;
    }
    OrderLine line = order_line(need, *to_buy, *need.offer);
    detail::add_line(std::move(line), suppliers[need.offer->supplier], out);
  }
  for (auto& [name, order] : suppliers) {
    detail::plan_deliveries(order, described);
    out.delivery_charges += order.delivery_charges;
    out.suppliers.push_back(std::move(order));
  }
  out.used_value = out.total - out.left_over_value;
  return out;
}

}  // namespace platewright
