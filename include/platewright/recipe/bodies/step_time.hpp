// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/recipe/step_time.hpp.

#include <algorithm>
#include <string>

#include "platewright/recipe/step_time.hpp"

namespace platewright {

namespace detail {

/// How many the plan has of what a time is written for.
PLATEWRIGHT_BODY Rational counted_for(const MethodStep& step, GrowsBy by,
                                      const ScaledRecipe& scaled) {
  const ScalePlan& plan = scaled.plan;
  const std::string& name = scaled.recipe->name;
  switch (by) {
    case GrowsBy::piece:
      if (!plan.pieces) throw Failure(at(problems::recipe_has_no_pieces(name), step.place));
      return *plan.pieces;
    case GrowsBy::vessel:
      if (!plan.vessels) throw Failure(at(problems::vessel_missing(step.text), step.place));
      return plan.vessels->count;
    case GrowsBy::portion:
      if (!plan.portions) throw Failure(at(problems::recipe_has_no_portions(name), step.place));
      return *plan.portions;
    case GrowsBy::batch:
      break;
  }
  return plan.batches.count;
}

}  // namespace detail

PLATEWRIGHT_BODY Rational times_longer(const std::optional<TimeGrowth>& grows,
                                       const MethodStep& step, const ScaledRecipe& scaled) {
  if (!grows) return 1;
  return up_to(detail::counted_for(step, grows->by, scaled) / grows->each, 1) / grows->people;
}

PLATEWRIGHT_BODY std::optional<Duration> hands_time(const MethodStep& step,
                                                    const ScaledRecipe& scaled) {
  if (!step.needs.hands) return std::nullopt;
  return *step.needs.hands * times_longer(step.needs.hands_for, step, scaled);
}

PLATEWRIGHT_BODY std::optional<TimeSpan> time_of(const MethodStep& step,
                                                 const ScaledRecipe& scaled) {
  const auto hands = hands_time(step, scaled);
  if (!step.takes) return hands ? std::optional(TimeSpan{*hands, *hands}) : std::nullopt;
  const Rational longer = times_longer(step.grows, step, scaled);
  const TimeSpan out{step.takes->least * longer, step.takes->most * longer};
  if (!hands) return out;
  return TimeSpan{std::max(out.least, *hands), std::max(out.most, *hands)};
}

}  // namespace platewright
