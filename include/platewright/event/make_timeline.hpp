// SPDX-License-Identifier: MIT
#pragma once
// Works a timeline out.

#include "platewright/event/kept_food.hpp"
#include "platewright/event/order.hpp"
#include "platewright/event/standing_food.hpp"
#include "platewright/problem/body.hpp"

namespace platewright {

/// What has to begin when, in elapsed time: a step of 12 h takes 12 h also in the night in which
/// the clocks are turned. Steps of a method follow each other; the oven, and then the rest, come
/// at the step that is marked for it, or after all steps where none is. A step behind it (carving,
/// a gravy) begins when the rest is over: one that is really done during the rest makes the plan
/// early, never late. A sub-recipe is ready when the step begins that says that it uses it, or,
/// where no step does, before anything of the recipe that uses it. Steps without a time are not
/// listed. Orders and deliveries stand at the beginning of their last day, one delivery for each
/// supplier and day. By the limits of `safety`, if it has any, dishes are named that stand too long
/// after the oven. Throws Failure for an event that does not say when the food is served, and for a
/// step that takes more than a year.
Timeline make_timeline(const Event& event, const Production& production, const Order& order,
                       const SafetyTable& safety = {});

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/event/bodies/make_timeline.hpp"
#endif
