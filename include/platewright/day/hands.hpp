// SPDX-License-Identifier: MIT
#pragma once
// How long a step keeps how many people busy.

#include <chrono>
#include <string>

#include "platewright/day/whole_count.hpp"
#include "platewright/event/recipe_work.hpp"

namespace platewright {

/// From the beginning of the work on; no one where it takes no time.
struct Hands {
  std::chrono::minutes time{0};
  std::size_t people = 1;
  std::string role;  ///< empty for anyone
};

/// Whether food is left to itself in a step of this kind, once it was begun.
inline bool goes_by_itself(StepKind kind) {
  switch (kind) {
    case StepKind::thaw:
    case StepKind::brine:
    case StepKind::marinate:
    case StepKind::dry_salt:
    case StepKind::out_of_the_refrigerator:
    case StepKind::roast:
    case StepKind::simmer:
    case StepKind::chill:
    case StepKind::reheat:
    case StepKind::hold_hot:
    case StepKind::hold_cold:
    case StepKind::rest:
      return true;
    case StepKind::sear:
    case StepKind::carve:
    case StepKind::plate:
    case StepKind::serve:
      break;
  }
  return false;
}

namespace detail {

inline std::size_t people_of(const std::optional<TimeGrowth>& growth) {
  return growth ? static_cast<std::size_t>(whole_count(growth->people)) : 1;
}

}  // namespace detail

/// What the step says; else nobody's where food is left to itself, in the oven too, and one
/// person's all the time where nothing is known. Throws Failure as `time_of` does.
inline Hands hands_of(const Work& work, const ScaledRecipe& scaled) {
  Hands out;
  if (work.kind != WorkKind::step) return out;
  const MethodStep& step = *work.step;
  const StepNeeds& needs = step.needs;
  out.role = needs.role;
  if (const auto hands = hands_time(step, scaled)) {
    out.people = detail::people_of(needs.hands_for);
    out.time = detail::whole_minutes(*hands);
    return out;
  }
  if (step.control && goes_by_itself(step.control->kind)) return out;
  out.people = detail::people_of(step.grows);
  out.time = work.least;
  return out;
}

}  // namespace platewright
