// SPDX-License-Identifier: MIT
#pragma once
// Where food stands in a step.

#include <array>
#include <string>
#include <string_view>
#include <vector>

#include "platewright/problem/catalogue/books.hpp"
#include "platewright/problem/failure.hpp"
#include "platewright/problem/folded_name.hpp"

namespace platewright {

enum class StepPlace {
  refrigerator,
  running_water,
  ice_water,
  counter,  ///< anywhere at the temperature of the room
  microwave,
  oven,
  blast_chiller,
  hot_box,
};

inline constexpr std::array all_step_places{StepPlace::refrigerator,  StepPlace::running_water,
                                            StepPlace::ice_water,     StepPlace::counter,
                                            StepPlace::microwave,     StepPlace::oven,
                                            StepPlace::blast_chiller, StepPlace::hot_box};

inline std::string_view name_of(StepPlace place) {
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

/// `on the counter`, `in running water`.
inline std::string where_words(StepPlace place) {
  if (place == StepPlace::counter) return "on the counter";
  const bool water = place == StepPlace::running_water || place == StepPlace::ice_water;
  return (water ? "in " : "in the ") + std::string(name_of(place));
}

/// Capitals do not matter; a walk-in is a refrigerator. Throws Failure, with the nearest one, for a
/// word that is none.
inline StepPlace step_place_from(std::string_view text) {
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
