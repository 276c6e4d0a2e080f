// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/kitchen/clock_hours.hpp.

#include "platewright/kitchen/clock_hours.hpp"

namespace platewright {

PLATEWRIGHT_BODY bool ClockHours::covers(std::chrono::minutes minute) const {
  if (from < until) return from <= minute && minute < until;
  return from <= minute || minute < until;
}

PLATEWRIGHT_BODY std::chrono::minutes ClockHours::length() const {
  return from < until ? until - from : until - from + std::chrono::hours(24);
}

}  // namespace platewright
