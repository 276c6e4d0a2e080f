// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/costing/price_list.hpp.

#include <utility>

#include "platewright/costing/price_list.hpp"

namespace platewright {

PLATEWRIGHT_BODY void PriceList::add(const std::string& ingredient, Purchase purchase) {
  if (purchase.said_in && *purchase.said_in != currency) {
    throw Failure(problems::exchange_rate_missing(purchase.said_in->code(), currency.code()));
  }
  entries[ingredient].purchases.push_back(std::move(purchase));
}

PLATEWRIGHT_BODY const PriceEntry* PriceList::find(const std::string& ingredient) const& {
  const auto found = entries.find(ingredient);
  return found == entries.end() ? nullptr : &found->second;
}

PLATEWRIGHT_BODY PriceList with_one_delivery(PriceList prices) {
  for (const auto& [name, entry] : prices.entries) {
    for (const Purchase& purchase : entry.purchases) {
      prices.suppliers[purchase.supplier].one_delivery = true;
    }
  }
  return prices;
}

}  // namespace platewright
