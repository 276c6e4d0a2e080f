// SPDX-License-Identifier: MIT
#pragma once
// From one time of day to another.

#include <chrono>

namespace platewright {

/// Every day, by the clock on the wall. One that ends no later than it begins goes past midnight;
/// all day if nothing is said.
struct ClockHours {
  std::chrono::minutes from{0};
  std::chrono::minutes until = std::chrono::hours(24);

  /// `minute` of a day, from 0.
  bool covers(std::chrono::minutes minute) const {
    if (from < until) return from <= minute && minute < until;
    return from <= minute || minute < until;
  }
  std::chrono::minutes length() const {
    return from < until ? until - from : until - from + std::chrono::hours(24);
  }

  friend bool operator==(const ClockHours&, const ClockHours&) = default;
};

}  // namespace platewright
