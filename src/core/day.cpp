// SPDX-License-Identifier: MIT
// The bodies of include/platewright/day, compiled.

#include "platewright/day/bodies/day_warnings.hpp"
#include "platewright/day/bodies/detail/oven_fit.hpp"
#include "platewright/day/bodies/detail/oven_tasks.hpp"
#include "platewright/day/bodies/detail/place_ovens.hpp"
#include "platewright/day/bodies/detail/place_works.hpp"
#include "platewright/day/bodies/detail/recipe_chain.hpp"
#include "platewright/day/bodies/detail/space_needs.hpp"
#include "platewright/day/bodies/find_loads.hpp"
#include "platewright/day/bodies/hands.hpp"
#include "platewright/day/bodies/oven_conflict.hpp"
#include "platewright/day/bodies/oven_task.hpp"
#include "platewright/day/bodies/people_on_duty.hpp"
#include "platewright/day/bodies/plan_day.hpp"
#include "platewright/day/bodies/whole_count.hpp"
