// SPDX-License-Identifier: MIT
#pragma once
// How long a step keeps how many people busy.

#include <chrono>
#include <string>

#include "platewright/day/whole_count.hpp"
#include "platewright/event/recipe_work.hpp"
#include "platewright/problem/body.hpp"

namespace platewright {

/// From the beginning of the work on; no one where it takes no time.
struct Hands {
  std::chrono::minutes time{0};
  std::size_t people = 1;
  std::string role;  ///< empty for anyone
};

/// Whether food is left to itself in a step of this kind, once it was begun.
bool goes_by_itself(StepKind kind);

/// What the step says; else nobody's where food is left to itself, in the oven too, and one
/// person's all the time where nothing is known. Throws Failure as `time_of` does.
Hands hands_of(const Work& work, const ScaledRecipe& scaled);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/day/bodies/hands.hpp"
#endif
