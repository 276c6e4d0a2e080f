// SPDX-License-Identifier: MIT
#pragma once
// The plan of a day: ovens, people, what does not fit.

#include <vector>

#include "platewright/card/kitchen_view.hpp"
#include "platewright/card/sheet.hpp"
#include "platewright/day/day_plan.hpp"
#include "platewright/event/event_plan.hpp"

namespace platewright {

/// What does not fit, and what a recipe does not say that the plan needs; for whatever sheet shows
/// the day.
std::vector<Box> day_boxes(const DayPlan& day);

/// Every load of the ovens, the day as a picture by oven and by person, who does what when, what is
/// taken out for each work, and, where the event says how it is quoted, the hours of each role
/// beside those of the quote. What does not fit stands first. `day` is the plan of `plan`'s
/// production.
Sheet day_sheet(const EventPlan& plan, const DayPlan& day, const KitchenView& kitchen);

}  // namespace platewright
