// SPDX-License-Identifier: MIT
#pragma once
// What each offer of each ingredient makes of an order.

#include <map>
#include <set>
#include <string>
#include <utility>
#include <vector>

#include "platewright/event/assignment.hpp"
#include "platewright/event/detail/offers_in_front.hpp"
#include "platewright/event/order_of_day.hpp"
#include "platewright/event/order_rank.hpp"

namespace platewright::detail {

/// The offers that come into question, the one in front now first, with what each costs.
struct OffersOfGoods {
  std::string ingredient;
  std::vector<Purchase> offers;
  std::vector<BuyingWay> ways;
};

/// The goods of an order and all that suppliers ask beside their prices.
class WaysToBuy {
 public:
  explicit WaysToBuy(std::vector<Occasion>& occasions)
      : occasions_(occasions), described_(suppliers_of_all(occasions)) {
    for (Occasion& occasion : occasions) lists_.push_back(&occasion.prices);
  }

  bool any_charges() const {
    return std::any_of(described_.begin(), described_.end(), [](const auto& supplier) {
      return supplier.second.minimum > Money() || supplier.second.delivery_charge > Money();
    });
  }

  /// Each offer is put in front once. The offers are as they were then.
  void find() {
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

  Assignment least() const {
    std::vector<std::vector<BuyingWay>> ways;
    for (const OffersOfGoods& one : goods_) ways.push_back(one.ways);
    return least_assignment(ways, charges_);
  }

  void put_in_front(const Assignment& assignment) {
    for (std::size_t i = 0; i < goods_.size(); ++i) {
      const OffersOfGoods& one = goods_[i];
      for (PriceList* list : lists_) {
        detail::put_in_front(one.offers[assignment.ways[i]], one.ingredient, *list);
      }
    }
  }

 private:
  void add(const std::string& name, const Order& order) {
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

  /// The lines of one ingredient together, and whether all of them are in time.
  std::pair<BuyingWay, bool> way_of(const std::string& name, const Order& order) {
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

  std::size_t number_of(const SupplierOrder& order) {
    const auto [known, is_new] = numbers_.emplace(order.supplier, charges_.size());
    if (is_new) charges_.push_back({order.terms.minimum, order.terms.delivery_charge});
    return known->second;
  }

  std::vector<Occasion>& occasions_;
  Suppliers described_;
  std::vector<PriceList*> lists_;
  std::vector<OffersOfGoods> goods_;
  std::map<std::string, std::size_t> numbers_;
  std::vector<SupplierCharges> charges_;
};

}  // namespace platewright::detail
