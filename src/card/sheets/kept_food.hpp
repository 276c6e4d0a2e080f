#pragma once
// Food that is made ahead, for the timeline.

#include <vector>

#include "platewright/card/blocks.hpp"
#include "platewright/event/timeline.hpp"

namespace platewright {

/// How each recipe that is made ahead is cooled and kept, and what its label says.
Table kept_table(const std::vector<KeptFood>& kept);

/// Cooked food that waits, while no step says how it is kept; there is at least one.
Box waiting_box(const std::vector<WaitingFood>& waiting);

}  // namespace platewright
