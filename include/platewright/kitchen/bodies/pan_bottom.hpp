// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/kitchen/pan_bottom.hpp.

#include <algorithm>

#include "platewright/kitchen/pan_bottom.hpp"

namespace platewright {

namespace detail {

PLATEWRIGHT_BODY Rational in_rows(const Length& pan_length, const Length& pan_width,
                                  const PanBottom& rack) {
  return down_to(rack.length / pan_length, 1) * down_to(rack.width / pan_width, 1);
}

}  // namespace detail

PLATEWRIGHT_BODY Rational pans_on_rack(const PanBottom& pan, const PanBottom& rack) {
  return std::max(detail::in_rows(pan.length, pan.width, rack),
                  detail::in_rows(pan.width, pan.length, rack));
}

}  // namespace platewright
