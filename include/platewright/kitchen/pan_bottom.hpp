// SPDX-License-Identifier: MIT
#pragma once
// The bottom of a pan or of a rack, and how many of the one stand on the other.

#include <algorithm>

#include "platewright/number/round.hpp"
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

namespace detail {
inline Rational in_rows(const Length& pan_length, const Length& pan_width, const PanBottom& rack) {
  return down_to(rack.length / pan_length, 1) * down_to(rack.width / pan_width, 1);
}
}  // namespace detail

/// How many pans stand side by side on a rack, all the same way round: 0 for one that is too large.
/// More may go on with some of them turned; none is counted on.
inline Rational pans_on_rack(const PanBottom& pan, const PanBottom& rack) {
  return std::max(detail::in_rows(pan.length, pan.width, rack),
                  detail::in_rows(pan.width, pan.length, rack));
}

}  // namespace platewright
