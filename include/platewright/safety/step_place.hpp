// SPDX-License-Identifier: MIT
#pragma once
// Where food stands in a step.

#include <array>
#include <string>
#include <string_view>

#include "platewright/problem/body.hpp"
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

std::string_view name_of(StepPlace place);

/// `on the counter`, `in running water`.
std::string where_words(StepPlace place);

/// Capitals do not matter; a walk-in is a refrigerator. Throws Failure, with the nearest one, for a
/// word that is none.
StepPlace step_place_from(std::string_view text);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/safety/bodies/step_place.hpp"
#endif
