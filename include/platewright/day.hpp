// SPDX-License-Identifier: MIT
#pragma once
// Everything of the floor `day`: ovens, hobs, people.

#include "platewright/day/day_plan.hpp"
#include "platewright/day/day_warnings.hpp"
#include "platewright/day/find_loads.hpp"
#include "platewright/day/hands.hpp"
#include "platewright/day/oven_conflict.hpp"
#include "platewright/day/oven_task.hpp"
#include "platewright/day/people_on_duty.hpp"
#include "platewright/day/plan_day.hpp"
#include "platewright/day/whole_count.hpp"
