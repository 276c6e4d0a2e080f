// SPDX-License-Identifier: MIT
#pragma once
// When a roast is likely to be done, at the soonest and at the latest.

#include <optional>

#include "platewright/heat/roast_course.hpp"
#include "platewright/heat/roast_model.hpp"
#include "platewright/problem/body.hpp"

namespace platewright {

/// What the cook's own timed roast says of each model: everything takes so many times as long.
struct Calibration {
  Band<double> pace{1, 1, 1};
};

/// Two roasts of one kind, weight and oven differ in their times by as much as this, either way:
/// common practice, no source; published times of one roast span 4 to 8 % either way.
inline Rational repeat_spread() {
  return fraction(1, 10);
}

/// A plan, not a promise: the thermometer decides when a roast is done.
struct RoastBand {
  Band<Duration> in_oven;
  Band<Temperature> highest;     ///< of the core, in the rest
  Band<Duration> highest_after;  ///< from the oven
  Band<RoastCourse> courses;     ///< by the fast, the likely and the slow model
  bool calibrated = false;
};

/// Fits each model to one timed roast of the cook's own: `timed` as it was done, `took` from the
/// oven's door closed to the core at the temperature at which it was taken out. Throws Failure for
/// a time below a quarter or above four times of what is likely.
Calibration calibrated_by(const RoastQuestion& timed, const Duration& took);

/// The roast by the fast, the likely and the slow model. Without a timed roast all that is not
/// known stands at its fast end in one and at its slow end in the other. With one, each model is
/// fitted to it: what is left between them is how they differ at another weight or oven, and the
/// band of times is as much wider as two roasts of one kind differ. Throws Failure where the roast
/// is never done.
RoastBand roast_band(const RoastQuestion& question,
                     const std::optional<Calibration>& calibration = std::nullopt);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/heat/bodies/roast_band.hpp"
#endif
