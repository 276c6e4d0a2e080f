#pragma once
// How long a step takes at the size that is made.

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

/// How long the step takes at this size: as tested; or else the time that it is written with for
/// each piece, batch, vessel or portion, again for what is left over of several that are done at
/// once, and shared by the people who do it. Nothing where no time is written. Throws Failure, at
/// the step's place, where the recipe does not count what the time is for.
inline std::optional<TimeSpan> time_of(const MethodStep& step, const ScaledRecipe& scaled) {
  if (!step.takes || !step.grows) return step.takes;
  const TimeGrowth& grows = *step.grows;
  const Rational times = up_to(detail::counted_for(step, grows.by, scaled) / grows.each, 1);
  const Rational longer = times / grows.people;
  return TimeSpan{step.takes->least * longer, step.takes->most * longer};
}

}  // namespace platewright
