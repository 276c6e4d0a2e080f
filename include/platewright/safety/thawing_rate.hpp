// SPDX-License-Identifier: MIT
#pragma once
// How long food thaws, by the weight of a piece.

#include <optional>
#include <string>

#include "platewright/problem/failure.hpp"
#include "platewright/quantity/quantity.hpp"
#include "platewright/safety/step_place.hpp"

namespace platewright {

/// As an authority prints it: `24 h for each 4 to 5 lb`.
struct ThawingRate {
  StepPlace where = StepPlace::refrigerator;
  Duration time;
  Mass each;          ///< the least weight that takes `time`: the careful figure
  Mass each_at_most;  ///< the greatest
  std::string source;
  std::string row;
  std::string note;
};

/// From the shortest to the longest time of one piece, in proportion to its weight as the source
/// has it.
struct ThawingTime {
  Duration least;
  Duration most;
};

/// time = weight / weight of the rate x time of the rate.
inline ThawingTime thawing_time(const ThawingRate& rate, const Mass& piece) {
  return {rate.time * (piece / rate.each_at_most), rate.time * (piece / rate.each)};
}

}  // namespace platewright
