// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/recipe/vessel_fill.hpp.

#include "platewright/recipe/vessel_fill.hpp"

namespace platewright {

PLATEWRIGHT_BODY std::optional<Volume> filled_volume(const RecipeVessel& vessel) {
  if (!vessel.volume) return std::nullopt;
  return *vessel.volume * vessel.fill;
}

PLATEWRIGHT_BODY Volume room_around(const RecipeVessel& vessel, const Volume& meat) {
  const Volume room = *vessel.volume - meat;
  if (room <= Volume()) throw Failure(problems::vessel_too_small(vessel.name));
  return room;
}

}  // namespace platewright
