// SPDX-License-Identifier: MIT
#pragma once
// Whether a load fits into an oven beside the loads that are in it.

#include <vector>

#include "platewright/day/oven_task.hpp"
#include "platewright/problem/body.hpp"

namespace platewright::detail {

/// What the oven is set to for a load, `minute` after it went in; `minute` lies within the load.
const Temperature& set_to(const OvenTask& task, Minute minute);

/// The minutes at which the oven is set anew for a load, its beginning among them.
std::vector<Minute> settings_begin(const OvenTask& task, Minute begins);

/// Two loads in one oven: at every minute that they share they ask for one temperature; those that
/// share none are as far apart as the oven takes from the last of the one to the first of the
/// other.
bool agree(const OvenTask& one, Minute one_begins, const OvenTask& other, Minute other_begins,
           Minute change);

/// The racks that stay free in an oven from `begins` to `ends`; of no oven fewer than 0.
std::int64_t free_racks(const std::vector<OvenTask>& tasks, const std::vector<OvenLoad>& loads,
                        std::size_t oven, std::int64_t racks, Minute begins, Minute ends);

std::int64_t racks_for(const OvenTask& task, std::size_t oven, std::int64_t pans);

/// How many pans of a task go into an oven at that minute: none where a load that is in it asks for
/// another temperature.
std::int64_t pans_that_fit(const std::vector<OvenTask>& tasks, const std::vector<OvenLoad>& loads,
                           std::size_t task, std::size_t oven, const OvenRoom& room, Minute begins);

}  // namespace platewright::detail

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/day/bodies/detail/oven_fit.hpp"
#endif
