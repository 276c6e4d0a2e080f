// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/problem/place.hpp.

#include "platewright/problem/place.hpp"

namespace platewright {

PLATEWRIGHT_BODY Place inside(Place place, std::string_view step) {
  if (!place.path.empty()) place.path += " > ";
  place.path += step;
  return place;
}

}  // namespace platewright
