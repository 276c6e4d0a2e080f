// SPDX-License-Identifier: MIT
#pragma once
// Why the ovens do not do, and what would.

#include <algorithm>
#include <optional>
#include <utility>
#include <vector>

#include "platewright/day/find_loads.hpp"

namespace platewright {

/// Tasks that can't all be cooked in the ovens there are, while any one fewer of them could; as far
/// as the search looked, where it stopped.
struct OvenConflict {
  std::vector<std::size_t> tasks;
  bool looked_at_all = true;
  /// One more oven like this one, counted from 0, would do.
  std::optional<std::size_t> one_more_oven = std::nullopt;
  /// This task alone would do it if it may go in so many minutes sooner, and be kept hot meanwhile.
  struct Sooner {
    std::size_t task = 0;
    Minute minutes = 0;
  };
  std::vector<Sooner> sooner = {};
};

/// How long before the latest a dish may go in so that something is gained: no food is held longer
/// than this here; common practice, no source.
inline constexpr Minute longest_hold_tried = 240;

namespace detail {

/// Asks many searches one after another, which share what may be spent.
class ConflictSearch {
 public:
  ConflictSearch(std::vector<OvenRoom> rooms, std::vector<OvenTask> tasks,
                 const std::vector<OvenLoad>& taken, std::int64_t& left)
      : rooms_(std::move(rooms)), tasks_(std::move(tasks)), taken_(taken), left_(left) {}

  OvenConflict run(std::vector<std::size_t> wanted) {
    leave_out_what_can_be(std::move(wanted));
    look_for_another_oven();
    look_for_longer_holds();
    return std::move(out_);
  }

 private:
  FoundLoads find(const std::vector<std::size_t>& wanted) {
    FoundLoads out = find_loads(rooms_, tasks_, wanted, taken_, std::min(left_, most_load_trials));
    left_ -= out.trials;
    return out;
  }

  void leave_out_what_can_be(std::vector<std::size_t> wanted) {
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

  void look_for_another_oven() {
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

  void look_for_longer_holds() {
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

  std::vector<OvenRoom> rooms_;
  std::vector<OvenTask> tasks_;
  const std::vector<OvenLoad>& taken_;
  std::int64_t& left_;
  OvenConflict out_ = {};
};

}  // namespace detail

/// Of tasks for which `find_loads` found no way. `left` is what all searches together may still
/// try; it is less afterwards.
inline OvenConflict oven_conflict(const std::vector<OvenRoom>& rooms,
                                  const std::vector<OvenTask>& tasks,
                                  const std::vector<std::size_t>& wanted,
                                  const std::vector<OvenLoad>& taken, std::int64_t& left) {
  return detail::ConflictSearch(rooms, tasks, taken, left).run(wanted);
}

}  // namespace platewright
