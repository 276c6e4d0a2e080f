// SPDX-License-Identifier: MIT
#pragma once
// Which pans go into which oven when.

#include <algorithm>
#include <optional>
#include <utility>
#include <vector>

#include "platewright/day/detail/oven_fit.hpp"

namespace platewright {

/// How many times one search holds a load against another before it says that it stopped.
inline constexpr std::int64_t most_load_trials = 50000;

/// What was found. Without loads: where all ways were looked at there is none.
struct FoundLoads {
  std::optional<std::vector<OvenLoad>> loads;
  bool looked_at_all = true;
  std::int64_t trials = 0;
};

namespace detail {

class LoadSearch {
 public:
  LoadSearch(const std::vector<OvenRoom>& rooms, const std::vector<OvenTask>& tasks,
             std::vector<OvenLoad> taken, std::vector<std::size_t> order, std::int64_t most)
      : rooms_(rooms),
        tasks_(tasks),
        loads_(std::move(taken)),
        order_(std::move(order)),
        most_(most) {}

  FoundLoads run() {
    place(0);
    return {std::move(best_), trials_ <= most_, trials_};
  }

 private:
  void place(std::size_t at) {
    if (at == order_.size()) {
      best_ = loads_;
      best_waiting_ = waiting_;
      return;
    }
    const OvenTask& task = tasks_[order_[at]];
    place_from(at, task.latest, 0, task.pans);
  }

  /// The pans that are left, at this minute into this oven or the next, or at an earlier minute.
  void place_from(std::size_t at, Minute begins, std::size_t oven, std::int64_t left) {
    const std::size_t number = order_[at];
    const OvenTask& task = tasks_[number];
    for (;; begins -= day_grid, oven = 0) {
      const Minute early = task.latest - begins;
      if (begins < task.soonest || (best_ && waiting_ + early * left >= best_waiting_)) return;
      for (; oven < rooms_.size(); ++oven) {
        trials_ += 1 + static_cast<std::int64_t>(loads_.size());
        if (trials_ > most_) return;
        const std::int64_t fit =
            std::min(left, pans_that_fit(tasks_, loads_, number, oven, rooms_[oven], begins));
        if (fit == 0) continue;
        loads_.push_back({number, oven, begins, fit,
                          task.whole_oven ? rooms_[oven].racks : racks_for(task, oven, fit)});
        waiting_ += early * fit;
        if (fit == left) {
          place(at + 1);
        } else {
          place_from(at, begins, oven + 1, left - fit);
        }
        waiting_ -= early * fit;
        loads_.pop_back();
      }
    }
  }

  const std::vector<OvenRoom>& rooms_;
  const std::vector<OvenTask>& tasks_;
  std::vector<OvenLoad> loads_;
  std::vector<std::size_t> order_;
  std::optional<std::vector<OvenLoad>> best_ = std::nullopt;
  std::int64_t waiting_ = 0;
  std::int64_t best_waiting_ = 0;
  std::int64_t most_;
  std::int64_t trials_ = 0;
};

/// Those that may move least come first, the longest of them first.
inline std::vector<std::size_t> tightest_first(const std::vector<OvenTask>& tasks,
                                               std::vector<std::size_t> order) {
  const auto slack = [&](std::size_t task) { return tasks[task].latest - tasks[task].soonest; };
  std::stable_sort(order.begin(), order.end(), [&](std::size_t left, std::size_t right) {
    if (slack(left) != slack(right)) return slack(left) < slack(right);
    return tasks[left].lasts() > tasks[right].lasts();
  });
  return order;
}

}  // namespace detail

/// Puts every pan of the tasks named by `wanted` into an oven, beside the loads that are `taken`:
/// of all ways that are looked at the one in which the pans wait least, counted in minutes before
/// the latest at which each may go in. A load begins at a task's latest minute or a whole number of
/// 5 minutes sooner, and takes as many pans as fit, or none. It is a search of all such ways, cut
/// off where a way can't wait less than the best, and after `most` trials.
inline FoundLoads find_loads(const std::vector<OvenRoom>& rooms, const std::vector<OvenTask>& tasks,
                             const std::vector<std::size_t>& wanted,
                             const std::vector<OvenLoad>& taken = {},
                             std::int64_t most = most_load_trials) {
  return detail::LoadSearch(rooms, tasks, taken, detail::tightest_first(tasks, wanted), most).run();
}

}  // namespace platewright
