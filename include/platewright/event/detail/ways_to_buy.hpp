// SPDX-License-Identifier: MIT
#pragma once
// What each offer of each ingredient makes of an order.

#include <map>
#include <string>
#include <utility>
#include <vector>

#include "platewright/event/assignment.hpp"
#include "platewright/event/detail/offers_in_front.hpp"
#include "platewright/event/order_of_day.hpp"
#include "platewright/event/order_rank.hpp"
#include "platewright/problem/body.hpp"

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
  explicit WaysToBuy(std::vector<Occasion>& occasions);

  bool any_charges() const;

  /// Each offer is put in front once. The offers are as they were then.
  void find();

  Assignment least() const;

  void put_in_front(const Assignment& assignment);

 private:
  void add(const std::string& name, const Order& order);

  /// The lines of one ingredient together, and whether all of them are in time.
  std::pair<BuyingWay, bool> way_of(const std::string& name, const Order& order);

  std::size_t number_of(const SupplierOrder& order);

  std::vector<Occasion>& occasions_;
  Suppliers described_;
  std::vector<PriceList*> lists_;
  std::vector<OffersOfGoods> goods_;
  std::map<std::string, std::size_t> numbers_;
  std::vector<SupplierCharges> charges_;
};

}  // namespace platewright::detail

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/event/bodies/detail/ways_to_buy.hpp"
#endif
