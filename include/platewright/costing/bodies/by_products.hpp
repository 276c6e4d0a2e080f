// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/costing/by_products.hpp.

#include "platewright/costing/by_products.hpp"

namespace platewright {

PLATEWRIGHT_BODY Money by_product_credit(const PriceEntry& entry, const Amount& bought) {
  Money out;
  for (const ByProduct& by_product : entry.by_products) {
    if (!by_product.used_as.empty()) continue;
    out += by_product.worth * by_product_of(by_product, bought).number;
  }
  return out;
}

}  // namespace platewright
