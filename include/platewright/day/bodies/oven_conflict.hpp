// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/day/oven_conflict.hpp.

#include <algorithm>
#include <utility>

#include "platewright/day/oven_conflict.hpp"

namespace platewright {

namespace detail {

PLATEWRIGHT_BODY ConflictSearch::ConflictSearch(std::vector<OvenRoom> rooms,
                                                std::vector<OvenTask> tasks,
                                                const std::vector<OvenLoad>& taken,
                                                std::int64_t& left)
    : rooms_(std::move(rooms)), tasks_(std::move(tasks)), taken_(taken), left_(left) {}

PLATEWRIGHT_BODY OvenConflict ConflictSearch::run(std::vector<std::size_t> wanted) {
  leave_out_what_can_be(std::move(wanted));
  look_for_another_oven();
  look_for_longer_holds();
  return std::move(out_);
}

PLATEWRIGHT_BODY FoundLoads ConflictSearch::find(const std::vector<std::size_t>& wanted) {
  FoundLoads out = find_loads(rooms_, tasks_, wanted, taken_, std::min(left_, most_load_trials));
  left_ -= out.trials;
  return out;
}

PLATEWRIGHT_BODY void ConflictSearch::leave_out_what_can_be(std::vector<std::size_t> wanted) {
  for (std::size_t i = wanted.size(); i-- > 0;) {
    std::vector<std::size_t> fewer = wanted;
    fewer.erase(fewer.begin() + static_cast<std::ptrdiff_t>(i));
    const FoundLoads found = find(fewer);
    if (found.loads) continue;
    // Where the search stopped, nobody knows that the others are enough for the conflict.
    if (found.looked_at_all) {
      wanted = std::move(fewer);
    } else {
      out_.looked_at_all = false;
    }
  }
  out_.tasks = std::move(wanted);
}

PLATEWRIGHT_BODY void ConflictSearch::look_for_another_oven() {
  const std::size_t ovens = rooms_.size();
  for (std::size_t oven = 0; oven < ovens && !out_.one_more_oven; ++oven) {
    rooms_.push_back(rooms_[oven]);
    for (OvenTask& task : tasks_) {
      task.on_a_rack.push_back(task.on_a_rack[oven]);
      task.racks_high.push_back(task.racks_high[oven]);
    }
    if (find(out_.tasks).loads) out_.one_more_oven = oven;
    rooms_.pop_back();
    for (OvenTask& task : tasks_) {
      task.on_a_rack.pop_back();
      task.racks_high.pop_back();
    }
  }
}

PLATEWRIGHT_BODY void ConflictSearch::look_for_longer_holds() {
  constexpr Minute step = 30;
  for (const std::size_t task : out_.tasks) {
    const Minute soonest = tasks_[task].soonest;
    for (Minute more = step; more <= longest_hold_tried; more += step) {
      tasks_[task].soonest = soonest - more;
      if (!find(out_.tasks).loads) continue;
      out_.sooner.push_back({task, more});
      break;
    }
    tasks_[task].soonest = soonest;
  }
}

}  // namespace detail

}  // namespace platewright
