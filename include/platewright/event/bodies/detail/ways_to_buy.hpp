// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/event/detail/ways_to_buy.hpp.

#include <set>

#include "platewright/event/detail/ways_to_buy.hpp"

namespace platewright::detail {

PLATEWRIGHT_BODY WaysToBuy::WaysToBuy(std::vector<Occasion>& occasions)
    : occasions_(occasions), described_(suppliers_of_all(occasions)) {
  for (Occasion& occasion : occasions) lists_.push_back(&occasion.prices);
}

PLATEWRIGHT_BODY bool WaysToBuy::any_charges() const {
  return std::any_of(described_.begin(), described_.end(), [](const auto& supplier) {
    return supplier.second.minimum > Money() || supplier.second.delivery_charge > Money();
  });
}

PLATEWRIGHT_BODY void WaysToBuy::find() {
  std::vector<std::string> names;
  std::set<std::string> seen;
  const Order order = order_of_day(occasions_);
  for (const SupplierOrder& supplier : order.suppliers) {
    for (const OrderLine& line : supplier.lines) {
      if (seen.insert(line.ingredient).second) names.push_back(line.ingredient);
    }
  }
  for (const std::string& name : names) add(name, order);
}

PLATEWRIGHT_BODY Assignment WaysToBuy::least() const {
  std::vector<std::vector<BuyingWay>> ways;
  for (const OffersOfGoods& one : goods_) ways.push_back(one.ways);
  return least_assignment(ways, charges_);
}

PLATEWRIGHT_BODY void WaysToBuy::put_in_front(const Assignment& assignment) {
  for (std::size_t i = 0; i < goods_.size(); ++i) {
    const OffersOfGoods& one = goods_[i];
    for (PriceList* list : lists_) {
      detail::put_in_front(one.offers[assignment.ways[i]], one.ingredient, *list);
    }
  }
}

PLATEWRIGHT_BODY void WaysToBuy::add(const std::string& name, const Order& order) {
  OffersOfGoods out;
  out.ingredient = name;
  bool in_time = false;
  const auto consider = [&](const Order& trial, const Purchase& offer) {
    const auto [way, right_time] = way_of(name, trial);
    // Goods at a wrong time are no choice beside those in time.
    if (in_time && !right_time) return;
    if (right_time && !in_time) {
      out.offers.clear();
      out.ways.clear();
    }
    in_time = in_time || right_time;
    out.offers.push_back(offer);
    out.ways.push_back(way);
  };
  const std::vector<Purchase> offers = offers_of(name, lists_);
  consider(order, offers.front());
  for (std::size_t i = 1; i < offers.size(); ++i) {
    const OffersBefore before(name, lists_);
    try {
      for (PriceList* list : lists_) detail::put_in_front(offers[i], name, *list);
      consider(order_of_day(occasions_), offers[i]);
    } catch (const Failure&) {
      continue;  // its measure is not the recipes'
    }
  }
  goods_.push_back(std::move(out));
}

PLATEWRIGHT_BODY std::pair<BuyingWay, bool> WaysToBuy::way_of(const std::string& name,
                                                              const Order& order) {
  BuyingWay out;
  bool right_time = true;
  for (const SupplierOrder& supplier : order.suppliers) {
    for (const OrderLine& line : supplier.lines) {
      if (line.ingredient != name) continue;
      out.supplier = number_of(supplier);
      out.cost += line.cost;
      if (!supplier.terms.one_delivery) out.day = line.deliver_on;
      right_time = right_time && !comes_at_a_wrong_time(line);
    }
  }
  return {out, right_time};
}

PLATEWRIGHT_BODY std::size_t WaysToBuy::number_of(const SupplierOrder& order) {
  const auto [known, is_new] = numbers_.emplace(order.supplier, charges_.size());
  if (is_new) charges_.push_back({order.terms.minimum, order.terms.delivery_charge});
  return known->second;
}

}  // namespace platewright::detail
