// SPDX-License-Identifier: MIT
#pragma once
// The bottom of a pan or of a rack, and how many of the one stand on the other.

#include "platewright/number/round.hpp"
#include "platewright/problem/body.hpp"
#include "platewright/quantity/quantity.hpp"
#include "platewright/quantity/units.hpp"

namespace platewright {

/// Outside, both sides above zero.
struct PanBottom {
  Length length;
  Length width;

  friend bool operator==(const PanBottom&, const PanBottom&) = default;
};

inline Area area_of(const PanBottom& bottom) {
  return bottom.length * bottom.width;
}

/// How many pans stand side by side on a rack, all the same way round: 0 for one that is too large.
/// More may go on with some of them turned; none is counted on.
Rational pans_on_rack(const PanBottom& pan, const PanBottom& rack);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/kitchen/bodies/pan_bottom.hpp"
#endif
