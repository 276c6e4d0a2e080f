// SPDX-License-Identifier: MIT
#pragma once
// The temperature in the middle of a roast over time, planned or logged.

#include <string>
#include <utility>
#include <vector>

#include "platewright/number/write.hpp"
#include "platewright/problem/body.hpp"
#include "platewright/problem/catalogue/heat.hpp"
#include "platewright/problem/failure.hpp"
#include "platewright/quantity/temperature.hpp"
#include "platewright/quantity/units.hpp"

namespace platewright {

/// One reading of the thermometer, `at` a time from the start.
struct CoreReading {
  Duration at;
  Temperature core = Temperature::celsius(0);
};

/// The longest time between two readings of one curve: common practice, no source.
inline Duration longest_log_gap() {
  return Duration::of(10, units::minute);
}

/// Two readings or more in the order of their times, with no gap in which nobody knows what the
/// core did.
class CoreCurve {
 public:
  /// Throws Failure for too few readings, and for what `check_next` does.
  static CoreCurve of(std::vector<CoreReading> readings);

  /// Throws Failure where `after` can't follow `before`: at the same time or earlier, or so much
  /// later that a gap is left.
  static void check_next(const CoreReading& before, const CoreReading& after);

  const std::vector<CoreReading>& readings() const { return readings_; }

 private:
  explicit CoreCurve(std::vector<CoreReading> readings) : readings_(std::move(readings)) {}

  static std::string time_text(const Duration& time);

  std::vector<CoreReading> readings_;
};

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/heat/bodies/core_curve.hpp"
#endif
