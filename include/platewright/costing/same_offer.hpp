// SPDX-License-Identifier: MIT
#pragma once
// When two offers are one.

#include "platewright/costing/purchase.hpp"
#include "platewright/problem/body.hpp"

namespace platewright {

/// One supplier and one pack, at whatever price: what a later price list changes.
bool same_offer(const Purchase& left, const Purchase& right);

/// The same offer at one price and on the same terms, whenever it was written down: packs of the
/// one can be shared with the other.
bool same_terms(const Purchase& left, const Purchase& right);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/costing/bodies/same_offer.hpp"
#endif
