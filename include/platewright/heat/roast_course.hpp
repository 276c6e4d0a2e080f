// SPDX-License-Identifier: MIT
#pragma once
// One roast from the closing of the oven's door to the end of its rest.

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <utility>
#include <vector>

#include "platewright/heat/conducting_body.hpp"
#include "platewright/heat/core_curve.hpp"
#include "platewright/heat/roast_model.hpp"
#include "platewright/heat/roast_question.hpp"

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
  RoastRun(const RoastModel& model, const RoastTerms& terms)
      : model_(model),
        terms_(terms),
        pull_(nearest_double(terms.pull.in_celsius())),
        body_(model.path, model.material, nearest_double(terms.start.in_celsius())) {
    note();
  }

  RoastCourse run() {
    for (const RoastOvenStep& step : terms_.oven) {
      const double until = step.time ? now_ + nearest_double(step.time->in(units::second))
                                     : nearest_double(longest_roast().in(units::second));
      if (roast(until, {nearest_double(step.at.in_celsius()), model_.oven_exchange, boiling}))
        break;
    }
    if (body_.core() < pull_ - 0.01) {
      throw Failure(
          problems::roast_never_done(as_short_decimal(terms_.pull.in_fahrenheit(), 1) + " F",
                                     as_short_decimal(longest_roast().in(units::hour), 0) + " h"));
    }
    const double out_at = now_;
    rest();
    const auto highest =
        std::max_element(readings_.begin(), readings_.end(),
                         [](const auto& a, const auto& b) { return a.core < b.core; });
    const Duration in_oven = seconds(out_at);
    return {in_oven, highest->core, highest->at - in_oven, CoreCurve::of(std::move(readings_))};
  }

 private:
  /// A roast stays wet enough that its surface boils: the dry crust above it is thin.
  static constexpr double boiling = 100;

  static Duration seconds(double count) { return Duration::of(exact_value(count), units::second); }

  void note() {
    const CoreReading reading{seconds(now_), Temperature::celsius(exact_value(body_.core()))};
    if (readings_.empty() || readings_.back().at < reading.at) readings_.push_back(reading);
  }

  /// Goes on for `span` in steps short enough.
  void advance(double span, const Surroundings& around) {
    const double steps = std::max(1.0, std::ceil(span / body_.longest_step()));
    for (auto left = static_cast<std::int64_t>(steps); left > 0; --left) {
      body_.step(span / steps, around);
    }
    now_ += span;
  }

  /// Whether the roast is done before the oven is set anew at `until`.
  bool roast(double until, const Surroundings& oven) {
    while (until - now_ > 1e-6) {
      const ConductingBody before = body_;
      const double start = now_;
      const double span = std::min(60.0, until - now_);
      advance(span, oven);
      if (body_.core() >= pull_) {
        const double share = (pull_ - before.core()) / (body_.core() - before.core());
        body_ = before;
        now_ = start;
        advance(span * share, oven);
        note();
        return true;
      }
      note();
    }
    return false;
  }

  void rest() {
    const double until = now_ + nearest_double(terms_.rest.in(units::second));
    while (until - now_ > 1e-6) {
      advance(std::min(60.0, until - now_),
              {nearest_double(terms_.room.in_celsius()), model_.room_exchange});
      note();
    }
  }

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
