// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/safety/step_place.hpp.

#include <vector>

#include "platewright/safety/step_place.hpp"

namespace platewright {

PLATEWRIGHT_BODY std::string_view name_of(StepPlace place) {
  switch (place) {
    case StepPlace::refrigerator:
      return "refrigerator";
    case StepPlace::running_water:
      return "running water";
    case StepPlace::ice_water:
      return "ice water";
    case StepPlace::counter:
      return "counter";
    case StepPlace::microwave:
      return "microwave";
    case StepPlace::oven:
      return "oven";
    case StepPlace::blast_chiller:
      return "blast chiller";
    case StepPlace::hot_box:
      return "hot box";
  }
  return {};
}

PLATEWRIGHT_BODY std::string where_words(StepPlace place) {
  if (place == StepPlace::counter) return "on the counter";
  const bool water = place == StepPlace::running_water || place == StepPlace::ice_water;
  return (water ? "in " : "in the ") + std::string(name_of(place));
}

PLATEWRIGHT_BODY StepPlace step_place_from(std::string_view text) {
  const std::string wanted = folded_name(text);
  for (const std::string_view word : {"fridge", "walk-in", "walk-in cooler", "cold room"}) {
    if (wanted == word) return StepPlace::refrigerator;
  }
  std::vector<std::string> known;
  for (const StepPlace place : all_step_places) {
    if (name_of(place) == wanted) return place;
    known.emplace_back(name_of(place));
  }
  throw Failure(problems::word_unknown("place", text, known));
}

}  // namespace platewright
