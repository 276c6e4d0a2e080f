// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/costing/converted_prices.hpp.

#include "platewright/costing/converted_prices.hpp"

namespace platewright {

PLATEWRIGHT_BODY PriceList in_currency(PriceList prices, const Currency& currency,
                                       const ForeignCurrency& own) {
  for (auto& [name, entry] : prices.entries) {
    for (Purchase& purchase : entry.purchases) {
      purchase.price = purchase.price * own.rate;
      purchase.deposit = purchase.deposit * own.rate;
      if (purchase.written_in) {
        purchase.written_in->rate *= own.rate;
      } else {
        purchase.written_in = own;
      }
    }
    for (ByProduct& by_product : entry.by_products) by_product.worth = by_product.worth * own.rate;
  }
  for (auto& [name, supplier] : prices.suppliers) {
    supplier.minimum = supplier.minimum * own.rate;
    supplier.delivery_charge = supplier.delivery_charge * own.rate;
  }
  for (auto& [code, rate] : prices.exchange_rates) rate.rate *= own.rate;
  prices.currency = currency;
  return prices;
}

}  // namespace platewright
