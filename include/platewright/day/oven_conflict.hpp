// SPDX-License-Identifier: MIT
#pragma once
// Why the ovens do not do, and what would.

#include <optional>
#include <vector>

#include "platewright/day/find_loads.hpp"
#include "platewright/problem/body.hpp"

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
                 const std::vector<OvenLoad>& taken, std::int64_t& left);

  OvenConflict run(std::vector<std::size_t> wanted);

 private:
  FoundLoads find(const std::vector<std::size_t>& wanted);

  void leave_out_what_can_be(std::vector<std::size_t> wanted);

  void look_for_another_oven();

  void look_for_longer_holds();

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

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/day/bodies/oven_conflict.hpp"
#endif
