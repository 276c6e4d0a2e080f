// SPDX-License-Identifier: MIT
#pragma once
// What is done for a recipe, one thing after another.

#include <algorithm>
#include <chrono>
#include <cstddef>
#include <optional>
#include <vector>

#include "platewright/problem/body.hpp"
#include "platewright/problem/catalogue/events.hpp"
#include "platewright/recipe/roasting_time.hpp"
#include "platewright/recipe/step_time.hpp"

namespace platewright {

enum class WorkKind {
  step,  ///< a step of the method
  oven,  ///< the oven at one setting
  rest,  ///< after the oven; it may take no time
};

/// One thing that is done. Its times are in whole minutes, rounded up, so that nothing begins too
/// late.
struct Work {
  WorkKind kind = WorkKind::step;
  const MethodStep* step = nullptr;  ///< of a step
  std::size_t number = 0;            ///< of a step, from 1
  std::optional<OvenStep> oven = {};
  std::optional<TimeSpan> takes = {};  ///< as written, at the size that is made
  std::chrono::minutes least{0};
  std::chrono::minutes most{0};
};

namespace detail {

/// Throws Failure for more than a year, which no kitchen waits and no calendar here is made for.
std::chrono::minutes whole_minutes(const Duration& time);

}  // namespace detail

/// In the order in which it is done. The oven, and then the rest, come at the last step that is
/// marked for it, whose own time they stand for, or else after all steps; their times are those of
/// the pieces that are cooked. Steps without a time take none. The recipe must outlive the result.
/// Throws Failure for a step that takes more than a year.
std::vector<Work> work_of(const ScaledRecipe& scaled);

/// Whether the work is a setting of the oven of which no one knows how long it takes.
inline bool has_unknown_time(const Work& work) {
  return work.kind == WorkKind::oven && !work.takes;
}

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/event/bodies/recipe_work.hpp"
#endif
