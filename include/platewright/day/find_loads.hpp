// SPDX-License-Identifier: MIT
#pragma once
// Which pans go into which oven when.

#include <optional>
#include <vector>

#include "platewright/day/detail/oven_fit.hpp"
#include "platewright/problem/body.hpp"

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
             std::vector<OvenLoad> taken, std::vector<std::size_t> order, std::int64_t most);

  FoundLoads run();

 private:
  void place(std::size_t at);

  /// The pans that are left, at this minute into this oven or the next, or at an earlier minute.
  void place_from(std::size_t at, Minute begins, std::size_t oven, std::int64_t left);

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
std::vector<std::size_t> tightest_first(const std::vector<OvenTask>& tasks,
                                        std::vector<std::size_t> order);

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

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/day/bodies/find_loads.hpp"
#endif
