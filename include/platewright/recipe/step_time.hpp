// SPDX-License-Identifier: MIT
#pragma once
// How long a step takes at the size that is made.

#include <algorithm>
#include <optional>
#include <string>

#include "platewright/number/round.hpp"
#include "platewright/recipe/scaled_recipe.hpp"

namespace platewright {

namespace detail {

/// How many the plan has of what a time is written for.
inline Rational counted_for(const MethodStep& step, GrowsBy by, const ScaledRecipe& scaled) {
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

/// How many times as long as it is written a time of the step takes at this size: once, where it
/// does not grow; else for each piece, batch, vessel or portion, again for what is left over of
/// several that are done at once, and shared by the people who do it. Throws Failure, at the step's
/// place, where the recipe does not count what the time is for.
inline Rational times_longer(const std::optional<TimeGrowth>& grows, const MethodStep& step,
                             const ScaledRecipe& scaled) {
  if (!grows) return 1;
  return up_to(detail::counted_for(step, grows->by, scaled) / grows->each, 1) / grows->people;
}

/// How long hands are busy with the step at this size, as far as it says so. Throws Failure as
/// `times_longer` does.
inline std::optional<Duration> hands_time(const MethodStep& step, const ScaledRecipe& scaled) {
  if (!step.needs.hands) return std::nullopt;
  return *step.needs.hands * times_longer(step.needs.hands_for, step, scaled);
}

/// How long the step takes at this size, which is no less than hands are busy with it; nothing
/// where no time is written. Throws Failure as `times_longer` does.
inline std::optional<TimeSpan> time_of(const MethodStep& step, const ScaledRecipe& scaled) {
  const auto hands = hands_time(step, scaled);
  if (!step.takes) return hands ? std::optional(TimeSpan{*hands, *hands}) : std::nullopt;
  const Rational longer = times_longer(step.grows, step, scaled);
  const TimeSpan out{step.takes->least * longer, step.takes->most * longer};
  if (!hands) return out;
  return TimeSpan{std::max(out.least, *hands), std::max(out.most, *hands)};
}

}  // namespace platewright
