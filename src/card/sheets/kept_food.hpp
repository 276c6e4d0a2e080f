// SPDX-License-Identifier: MIT
#pragma once
// Food that is made ahead, for the timeline.

#include <string>
#include <vector>

#include "platewright/card/blocks.hpp"
#include "platewright/event/timeline.hpp"

namespace platewright {

namespace card {

/// Where and how cold: `in the refrigerator at 38 °F (3 °C)`.
std::string kept_words(const StepControl& control);

}  // namespace card

/// How each recipe that is made ahead is cooled and kept, and what its label says.
Table kept_table(const std::vector<KeptFood>& kept);

/// Cooked food that waits, while no step says how it is kept; there is at least one.
Box waiting_box(const std::vector<WaitingFood>& waiting);

}  // namespace platewright
