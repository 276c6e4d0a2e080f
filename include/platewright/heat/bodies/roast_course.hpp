// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/heat/roast_course.hpp.

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <utility>

#include "platewright/heat/roast_course.hpp"

namespace platewright {

namespace detail {

PLATEWRIGHT_BODY RoastRun::RoastRun(const RoastModel& model, const RoastTerms& terms)
    : model_(model),
      terms_(terms),
      pull_(nearest_double(terms.pull.in_celsius())),
      body_(model.path, model.material, nearest_double(terms.start.in_celsius())) {
  note();
}

PLATEWRIGHT_BODY RoastCourse RoastRun::run() {
  for (const RoastOvenStep& step : terms_.oven) {
    const double until = step.time ? now_ + nearest_double(step.time->in(units::second))
                                   : nearest_double(longest_roast().in(units::second));
    if (roast(until, {nearest_double(step.at.in_celsius()), model_.oven_exchange, boiling})) break;
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

PLATEWRIGHT_BODY void RoastRun::note() {
  const CoreReading reading{seconds(now_), Temperature::celsius(exact_value(body_.core()))};
  if (readings_.empty() || readings_.back().at < reading.at) readings_.push_back(reading);
}

PLATEWRIGHT_BODY void RoastRun::advance(double span, const Surroundings& around) {
  const double steps = std::max(1.0, std::ceil(span / body_.longest_step()));
  for (auto left = static_cast<std::int64_t>(steps); left > 0; --left) {
    body_.step(span / steps, around);
  }
  now_ += span;
}

PLATEWRIGHT_BODY bool RoastRun::roast(double until, const Surroundings& oven) {
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

PLATEWRIGHT_BODY void RoastRun::rest() {
  const double until = now_ + nearest_double(terms_.rest.in(units::second));
  while (until - now_ > 1e-6) {
    advance(std::min(60.0, until - now_),
            {nearest_double(terms_.room.in_celsius()), model_.room_exchange});
    note();
  }
}

}  // namespace detail

}  // namespace platewright
