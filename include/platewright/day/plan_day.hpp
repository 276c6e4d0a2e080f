// SPDX-License-Identifier: MIT
#pragma once
// Plans the day of an event in its kitchen.

#include "platewright/day/detail/place_ovens.hpp"
#include "platewright/day/detail/place_works.hpp"
#include "platewright/day/detail/space_needs.hpp"
#include "platewright/event/make_timeline.hpp"
#include "platewright/problem/body.hpp"

namespace platewright {

/// Which oven when, who does what, and what does not go, by what the workplace says that it has.
/// The ovens of all dishes are planned together (`find_loads`), those of each sub-recipe beside
/// them; then every work begins as late as the next one, the oven and free hands allow, within the
/// shortest and the longest time that its step names; where hands are short, the dishes choose them
/// in other orders, and then go into the oven sooner, as far as they may; of these tries the first
/// that leaves the fewest steps short counts. A load that went in before the last of its dish waits
/// for it, which the longest times of the steps behind the oven have to allow. Throws Failure for
/// an event that does not say when the food is served, and as `work_of` does.
DayPlan plan_day(const Event& event, const Production& production, const Workplace& workplace);

/// Puts the times of the plan into the timeline of the same production, which then goes by them. Of
/// a dish that stands twice on the menu the earlier time counts.
void set_planned(const DayPlan& plan, Timeline& timeline);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/day/bodies/plan_day.hpp"
#endif
