// SPDX-License-Identifier: MIT
#pragma once
// One roast from the closing of the oven's door to the end of its rest.

#include <vector>

#include "platewright/heat/conducting_body.hpp"
#include "platewright/heat/core_curve.hpp"
#include "platewright/heat/roast_model.hpp"
#include "platewright/heat/roast_question.hpp"
#include "platewright/problem/body.hpp"

namespace platewright {

/// How a roast goes by one model. The figures are those of floating-point work, taken over to their
/// last digit; they are no more exact for it.
struct RoastCourse {
  Duration in_oven;
  Temperature highest = Temperature::celsius(0);  ///< of the core, until the rest is over
  Duration highest_after;                         ///< from the oven
  CoreCurve curve;                                ///< a reading a minute, and when it comes out
};

/// No roast is followed for longer.
inline Duration longest_roast() {
  return Duration::of(48, units::hour);
}

namespace detail {

/// Follows one body and writes down its core.
class RoastRun {
 public:
  RoastRun(const RoastModel& model, const RoastTerms& terms);

  RoastCourse run();

 private:
  /// A roast stays wet enough that its surface boils: the dry crust above it is thin.
  static constexpr double boiling = 100;

  static Duration seconds(double count) { return Duration::of(exact_value(count), units::second); }

  void note();

  /// Goes on for `span` in steps short enough.
  void advance(double span, const Surroundings& around);

  /// Whether the roast is done before the oven is set anew at `until`.
  bool roast(double until, const Surroundings& oven);

  void rest();

  const RoastModel& model_;
  const RoastTerms& terms_;
  double pull_;
  ConductingBody body_;
  double now_ = 0;
  std::vector<CoreReading> readings_;
};

}  // namespace detail

/// Works one model through. The time at which the core reaches the temperature asked for is found
/// within a minute's step by a straight line, which is off by less than a second. Throws Failure
/// where it is not reached in `longest_roast`.
inline RoastCourse roast_course(const RoastModel& model, const RoastQuestion& question) {
  return detail::RoastRun(model, question.terms()).run();
}

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/heat/bodies/roast_course.hpp"
#endif
