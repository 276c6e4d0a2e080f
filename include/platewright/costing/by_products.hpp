// SPDX-License-Identifier: MIT
#pragma once
// What is left of a piece: credited, or used in another recipe, never both.

#include "platewright/costing/price_list.hpp"
#include "platewright/costing/unit_price.hpp"
#include "platewright/problem/body.hpp"

namespace platewright {

/// The weight of a by-product of `bought`, in the measure that its worth is for. Throws Failure
/// where the goods are not bought in that measure.
inline Amount by_product_of(const ByProduct& by_product, const Amount& bought) {
  return scaled(in_unit(bought, by_product.unit), by_product.share);
}

/// The worth of the by-products of `bought` that are credited.
Money by_product_credit(const PriceEntry& entry, const Amount& bought);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/costing/bodies/by_products.hpp"
#endif
