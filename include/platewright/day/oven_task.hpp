// SPDX-License-Identifier: MIT
#pragma once
// What has to go into the ovens, in minutes.

#include <cstddef>
#include <cstdint>
#include <string>
#include <vector>

#include "platewright/problem/body.hpp"
#include "platewright/quantity/temperature.hpp"

namespace platewright {

/// On the one time line of the event.
using Minute = std::int64_t;

/// The grid of a kitchen's clock: what may begin sooner does so at whole numbers of it.
inline constexpr Minute day_grid = 5;

/// The oven at one temperature.
struct OvenSetting {
  Minute lasts = 0;
  Temperature at = Temperature::celsius(0);
};

/// One recipe that is cooked in an oven, in one load or several.
struct OvenTask {
  std::string recipe;
  Minute soonest = 0;                 ///< that its first load may go in
  Minute latest = 0;                  ///< that its last load may go in
  std::vector<OvenSetting> settings;  ///< one after another; at least one
  std::int64_t pans = 1;
  /// By oven: how many of its pans stand on one rack; 0 where the oven can't take them.
  std::vector<std::int64_t> on_a_rack;
  /// By oven: the racks, one above another, that a pan takes as high as it stands.
  std::vector<std::int64_t> racks_high;
  /// How many pans it has is not known: it takes a whole oven.
  bool whole_oven = false;

  Minute lasts() const;
};

struct OvenRoom {
  std::int64_t racks = 1;
  Minute change = 0;  ///< from one temperature to another, while nothing is in it
};

/// Pans that go into an oven together; `task` and `oven` are counted from 0.
struct OvenLoad {
  std::size_t task = 0;
  std::size_t oven = 0;
  Minute begins = 0;
  std::int64_t pans = 0;
  std::int64_t racks = 0;
};

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/day/bodies/oven_task.hpp"
#endif
