#pragma once
// How long a step takes at the size that is made.

#include <optional>

#include "platewright/number/round.hpp"
#include "platewright/recipe/scale_plan.hpp"

namespace platewright {

namespace detail {

/// How many the plan has of what a time is written for.
inline Rational counted_for(GrowsBy by, const ScalePlan& plan) {
  switch (by) {
    case GrowsBy::piece:
      return plan.pieces.value_or(plan.factor);
    case GrowsBy::vessel:
      return plan.vessels ? plan.vessels->count : plan.factor;
    case GrowsBy::portion:
      return plan.portions.value_or(plan.factor);
    case GrowsBy::batch:
      break;
  }
  return plan.batches.count;
}

}  // namespace detail

/// How long the step takes in this plan: as tested; or else the time that it is written with for
/// each piece, batch, vessel or portion, again for what is left over of several that are done at
/// once, and shared by the people who do it. Nothing where no time is written.
inline std::optional<TimeSpan> time_of(const MethodStep& step, const ScalePlan& plan) {
  if (!step.takes || !step.grows) return step.takes;
  const TimeGrowth& grows = *step.grows;
  const Rational times = up_to(detail::counted_for(grows.by, plan) / grows.each, 1);
  const Rational longer = times / grows.people;
  return TimeSpan{step.takes->least * longer, step.takes->most * longer};
}

}  // namespace platewright
