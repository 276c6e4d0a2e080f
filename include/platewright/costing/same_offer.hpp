// SPDX-License-Identifier: MIT
#pragma once
// When two offers are one.

#include "platewright/costing/purchase.hpp"

namespace platewright {

/// One supplier and one pack, at whatever price: what a later price list changes.
inline bool same_offer(const Purchase& left, const Purchase& right) {
  return left.supplier == right.supplier && left.by_the_piece == right.by_the_piece &&
         same_measure(left.content.unit, right.content.unit) &&
         left.content.canonical() == right.content.canonical();
}

/// The same offer at one price and on the same terms, whenever it was written down: packs of the
/// one can be shared with the other.
inline bool same_terms(const Purchase& left, const Purchase& right) {
  return same_offer(left, right) && left.price == right.price && left.deposit == right.deposit &&
         left.days == right.days && left.least == right.least;
}

}  // namespace platewright
