// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/day/find_loads.hpp.

#include <algorithm>
#include <utility>

#include "platewright/day/find_loads.hpp"

namespace platewright {

namespace detail {

PLATEWRIGHT_BODY LoadSearch::LoadSearch(const std::vector<OvenRoom>& rooms,
                                        const std::vector<OvenTask>& tasks,
                                        std::vector<OvenLoad> taken, std::vector<std::size_t> order,
                                        std::int64_t most)
    : rooms_(rooms),
      tasks_(tasks),
      loads_(std::move(taken)),
      order_(std::move(order)),
      most_(most) {}

PLATEWRIGHT_BODY FoundLoads LoadSearch::run() {
  place(0);
  return {std::move(best_), trials_ <= most_, trials_};
}

PLATEWRIGHT_BODY void LoadSearch::place(std::size_t at) {
  if (at == order_.size()) {
    best_ = loads_;
    best_waiting_ = waiting_;
    return;
  }
  const OvenTask& task = tasks_[order_[at]];
  place_from(at, task.latest, 0, task.pans);
}

PLATEWRIGHT_BODY void LoadSearch::place_from(std::size_t at, Minute begins, std::size_t oven,
                                             std::int64_t left) {
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

PLATEWRIGHT_BODY std::vector<std::size_t> tightest_first(const std::vector<OvenTask>& tasks,
                                                         std::vector<std::size_t> order) {
  const auto slack = [&](std::size_t task) { return tasks[task].latest - tasks[task].soonest; };
  std::stable_sort(order.begin(), order.end(), [&](std::size_t left, std::size_t right) {
    if (slack(left) != slack(right)) return slack(left) < slack(right);
    return tasks[left].lasts() > tasks[right].lasts();
  });
  return order;
}

}  // namespace detail

}  // namespace platewright
