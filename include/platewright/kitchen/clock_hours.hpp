// SPDX-License-Identifier: MIT
#pragma once
// From one time of day to another.

#include <chrono>

#include "platewright/problem/body.hpp"

namespace platewright {

/// Every day, by the clock on the wall. One that ends no later than it begins goes past midnight;
/// all day if nothing is said.
struct ClockHours {
  std::chrono::minutes from{0};
  std::chrono::minutes until = std::chrono::hours(24);

  /// `minute` of a day, from 0.
  bool covers(std::chrono::minutes minute) const;
  std::chrono::minutes length() const;

  friend bool operator==(const ClockHours&, const ClockHours&) = default;
};

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/kitchen/bodies/clock_hours.hpp"
#endif
