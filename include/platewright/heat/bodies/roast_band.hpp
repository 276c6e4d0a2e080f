// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/heat/roast_band.hpp.

#include <algorithm>
#include <cmath>

#include "platewright/heat/roast_band.hpp"

namespace platewright {

namespace detail {

template <class Figure>
Band<Figure> sorted_band(const Figure& fast, const Figure& likely, const Figure& slow) {
  return {std::min({fast, likely, slow}), likely, std::max({fast, likely, slow})};
}

/// The pace at which a model takes as long as was timed. Time goes with the pace but for the oven
/// steps that were timed by the clock, so that a few rounds find it.
PLATEWRIGHT_BODY double pace_for(const RoastModel& model, const RoastQuestion& timed,
                                 const Duration& took) {
  const double wanted = nearest_double(took.in(units::second));
  double pace = 1;
  for (int round = 0; round < 60; ++round) {
    const double found =
        nearest_double(roast_course(at_pace(model, pace), timed).in_oven.in(units::second));
    if (std::abs(found - wanted) < 0.5) return pace;
    pace *= wanted / found;
    if (pace < 0.1 || pace > 10) break;
  }
  throw Failure(problems::timed_roast_unlikely(
      as_short_decimal(took.in(units::minute), 0) + " min",
      as_short_decimal(roast_course(model, timed).in_oven.in(units::minute), 0) + " min"));
}

}  // namespace detail

PLATEWRIGHT_BODY Calibration calibrated_by(const RoastQuestion& timed, const Duration& took) {
  const Band<RoastModel> models = roast_models(timed.terms());
  const Duration likely = roast_course(models.likely, timed).in_oven;
  if (took * 4 < likely || took > likely * 4) {
    throw Failure(
        problems::timed_roast_unlikely(as_short_decimal(took.in(units::minute), 0) + " min",
                                       as_short_decimal(likely.in(units::minute), 0) + " min"));
  }
  return {{detail::pace_for(models.least, timed, took),
           detail::pace_for(models.likely, timed, took),
           detail::pace_for(models.most, timed, took)}};
}

PLATEWRIGHT_BODY RoastBand roast_band(const RoastQuestion& question,
                                      const std::optional<Calibration>& calibration) {
  const Band<double> pace = calibration.value_or(Calibration{}).pace;
  const Band<RoastModel> models = roast_models(question.terms());
  RoastCourse fast = roast_course(at_pace(models.least, pace.least), question);
  RoastCourse likely = roast_course(at_pace(models.likely, pace.likely), question);
  RoastCourse slow = roast_course(at_pace(models.most, pace.most), question);
  Band<Duration> in_oven = detail::sorted_band(fast.in_oven, likely.in_oven, slow.in_oven);
  if (calibration) {
    in_oven.least = in_oven.least * (Rational(1) - repeat_spread());
    in_oven.most = in_oven.most * (Rational(1) + repeat_spread());
  }
  const auto highest = detail::sorted_band(fast.highest, likely.highest, slow.highest);
  const auto after =
      detail::sorted_band(fast.highest_after, likely.highest_after, slow.highest_after);
  return {std::move(in_oven),
          highest,
          after,
          {std::move(fast), std::move(likely), std::move(slow)},
          calibration.has_value()};
}

}  // namespace platewright
