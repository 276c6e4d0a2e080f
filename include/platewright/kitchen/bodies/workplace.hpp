// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/kitchen/workplace.hpp.

#include "platewright/kitchen/workplace.hpp"

namespace platewright {

PLATEWRIGHT_BODY std::optional<Rational> pans_in_one_place(const std::string& pan,
                                                           const std::optional<PanBottom>& bottom,
                                                           const PanSpace& space) {
  if (pan == space.pan) return Rational(1);
  if (!bottom || !space.bottom) return std::nullopt;
  return pans_on_rack(*bottom, *space.bottom);
}

PLATEWRIGHT_BODY Rational Oven::racks_high(const std::optional<Length>& stands) const {
  return stands && apart ? up_to(*stands / *apart, 1) : Rational(1);
}

PLATEWRIGHT_BODY bool Oven::reaches(const Temperature& at) const {
  return !(lowest && at < *lowest) && !(highest && *highest < at);
}

}  // namespace platewright
