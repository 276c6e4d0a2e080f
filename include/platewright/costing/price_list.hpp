// SPDX-License-Identifier: MIT
#pragma once
// What everything costs, by the name of the ingredient.

#include <map>
#include <string>

#include "platewright/costing/purchase.hpp"
#include "platewright/costing/supplier.hpp"
#include "platewright/problem/body.hpp"
#include "platewright/problem/catalogue/larders.hpp"
#include "platewright/problem/failure.hpp"

namespace platewright {

struct PriceList {
  Currency currency = Currency("USD");
  std::map<std::string, PriceEntry> entries = {};
  Suppliers suppliers = {};  ///< those of whom the book says more than a name
  /// By code, the currencies that prices may be written in beside the list's own.
  std::map<std::string, ForeignCurrency> exchange_rates = {};

  /// Throws Failure for an offer that was said in another currency than the list's.
  void add(const std::string& ingredient, Purchase purchase);

  /// Null for what the list does not have.
  const PriceEntry* find(const std::string& ingredient) const&;
  const PriceEntry* find(const std::string&) && = delete;
};

/// The list with one delivery of every supplier for all of an order.
PriceList with_one_delivery(PriceList prices);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/costing/bodies/price_list.hpp"
#endif
