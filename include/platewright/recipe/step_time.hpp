// SPDX-License-Identifier: MIT
#pragma once
// How long a step takes at the size that is made.

#include <optional>

#include "platewright/number/round.hpp"
#include "platewright/problem/body.hpp"
#include "platewright/recipe/scaled_recipe.hpp"

namespace platewright {

/// How many times as long as it is written a time of the step takes at this size: once, where it
/// does not grow; else for each piece, batch, vessel or portion, again for what is left over of
/// several that are done at once, and shared by the people who do it. Throws Failure, at the step's
/// place, where the recipe does not count what the time is for.
Rational times_longer(const std::optional<TimeGrowth>& grows, const MethodStep& step,
                      const ScaledRecipe& scaled);

/// How long hands are busy with the step at this size, as far as it says so. Throws Failure as
/// `times_longer` does.
std::optional<Duration> hands_time(const MethodStep& step, const ScaledRecipe& scaled);

/// How long the step takes at this size, which is no less than hands are busy with it; nothing
/// where no time is written. Throws Failure as `times_longer` does.
std::optional<TimeSpan> time_of(const MethodStep& step, const ScaledRecipe& scaled);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/recipe/bodies/step_time.hpp"
#endif
