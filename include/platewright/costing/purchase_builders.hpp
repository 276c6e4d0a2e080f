// SPDX-License-Identifier: MIT
#pragma once
// Words for writing offers down in a program: `pack(25_lb, ...)`.

#include <string>
#include <utility>

#include "platewright/costing/purchase.hpp"
#include "platewright/problem/body.hpp"

namespace platewright::builders {

/// A pack with its content at a price.
Purchase pack(const Amount& content, const Money& price, std::string supplier = {});

/// The same at a price that names its currency: `pack(25_lb, 20_usd)`.
Purchase pack(const Amount& content, const SumIn& price, std::string supplier = {});

/// Whole pieces of varying weight; the price, which may name its currency, is that of one of
/// average weight.
template <class Price>
Purchase piece(const Amount& average, const Price& price, std::string supplier = {}) {
  Purchase out = pack(average, price, std::move(supplier));
  out.by_the_piece = true;
  return out;
}

}  // namespace platewright::builders

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/costing/bodies/purchase_builders.hpp"
#endif
