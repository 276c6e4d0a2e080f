// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/costing/purchase_builders.hpp.

#include "platewright/costing/purchase_builders.hpp"

namespace platewright::builders {

PLATEWRIGHT_BODY Purchase pack(const Amount& content, const Money& price, std::string supplier) {
  Purchase out{content, price};
  out.supplier = std::move(supplier);
  return out;
}

PLATEWRIGHT_BODY Purchase pack(const Amount& content, const SumIn& price, std::string supplier) {
  Purchase out = pack(content, price.money, std::move(supplier));
  out.said_in = price.currency;
  return out;
}

}  // namespace platewright::builders
