// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/heat/core_curve.hpp.

#include "platewright/heat/core_curve.hpp"

namespace platewright {

PLATEWRIGHT_BODY CoreCurve CoreCurve::of(std::vector<CoreReading> readings) {
  if (readings.size() < 2) throw Failure(problems::core_log_short(readings.size()));
  for (std::size_t i = 1; i < readings.size(); ++i) check_next(readings[i - 1], readings[i]);
  return CoreCurve(std::move(readings));
}

PLATEWRIGHT_BODY void CoreCurve::check_next(const CoreReading& before, const CoreReading& after) {
  if (after.at <= before.at) {
    throw Failure(problems::core_log_order(time_text(before.at), time_text(after.at)));
  }
  if (after.at - before.at > longest_log_gap()) {
    throw Failure(problems::core_log_gap(time_text(before.at), time_text(after.at),
                                         time_text(longest_log_gap())));
  }
}

PLATEWRIGHT_BODY std::string CoreCurve::time_text(const Duration& time) {
  return as_short_decimal(time.in(units::minute), 2) + " min";
}

}  // namespace platewright
