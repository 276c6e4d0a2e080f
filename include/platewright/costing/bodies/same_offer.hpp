// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/costing/same_offer.hpp.

#include "platewright/costing/same_offer.hpp"

namespace platewright {

PLATEWRIGHT_BODY bool same_offer(const Purchase& left, const Purchase& right) {
  return left.supplier == right.supplier && left.by_the_piece == right.by_the_piece &&
         same_measure(left.content.unit, right.content.unit) &&
         left.content.canonical() == right.content.canonical();
}

PLATEWRIGHT_BODY bool same_terms(const Purchase& left, const Purchase& right) {
  return same_offer(left, right) && left.price == right.price && left.deposit == right.deposit &&
         left.days == right.days && left.least == right.least;
}

}  // namespace platewright
