// SPDX-License-Identifier: MIT
#pragma once
// What is done for a recipe, one thing after another.

#include <algorithm>
#include <chrono>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <vector>

#include "platewright/problem/catalogue/events.hpp"
#include "platewright/recipe/roasting_time.hpp"
#include "platewright/recipe/step_time.hpp"

namespace platewright {

enum class WorkKind {
  step,  ///< a step of the method
  oven,  ///< the oven at one setting
  rest,  ///< after the oven; it may take no time
};

/// One thing that is done. Its times are in whole minutes, rounded up, so that nothing begins too
/// late.
struct Work {
  WorkKind kind = WorkKind::step;
  const MethodStep* step = nullptr;  ///< of a step
  std::size_t number = 0;            ///< of a step, from 1
  std::optional<OvenStep> oven = {};
  std::optional<TimeSpan> takes = {};  ///< as written, at the size that is made
  std::chrono::minutes least{0};
  std::chrono::minutes most{0};
};

namespace detail {

/// Throws Failure for more than a year, which no kitchen waits and no calendar here is made for.
inline std::chrono::minutes whole_minutes(const Duration& time) {
  const Rational days = time.in(units::day);
  if (days > 366) throw Failure(problems::step_too_long(as_decimal(days, 0)));
  return std::chrono::minutes(static_cast<std::int64_t>(ceiling_of(time.in(units::minute))));
}

inline void set_time(Work& work, const std::optional<TimeSpan>& takes) {
  if (!takes) return;
  work.takes = takes;
  work.least = whole_minutes(takes->least);
  work.most = whole_minutes(takes->most);
}

inline void append_oven(const ScaledRecipe& scaled, std::vector<Work>& out) {
  const Recipe& recipe = *scaled.recipe;
  for (const PlannedOvenStep& planned : oven_plan(recipe, scaled.plan)) {
    Work work;
    work.kind = WorkKind::oven;
    work.oven = planned.step;
    if (const auto& time = planned.step.time) set_time(work, TimeSpan{*time, *time});
    out.push_back(std::move(work));
  }
  if (recipe.oven.empty() && !recipe.rest) return;
  Work rest;
  rest.kind = WorkKind::rest;
  if (recipe.rest) set_time(rest, TimeSpan{*recipe.rest, *recipe.rest});
  out.push_back(std::move(rest));
}

}  // namespace detail

/// In the order in which it is done. The oven, and then the rest, come at the last step that is
/// marked for it, whose own time they stand for, or else after all steps; their times are those of
/// the pieces that are cooked. Steps without a time take none. The recipe must outlive the result.
/// Throws Failure for a step that takes more than a year.
inline std::vector<Work> work_of(const ScaledRecipe& scaled) {
  const Recipe& recipe = *scaled.recipe;
  const MethodStep* at_oven = nullptr;
  for (const MethodStep& step : recipe.steps) at_oven = step.oven ? &step : at_oven;
  std::vector<Work> out;
  for (std::size_t i = 0; i < recipe.steps.size(); ++i) {
    const MethodStep& step = recipe.steps[i];
    Work work;
    work.step = &step;
    work.number = i + 1;
    const auto takes = time_of(step, scaled);
    if (&step != at_oven || recipe.oven.empty()) detail::set_time(work, takes);
    out.push_back(std::move(work));
    if (&step == at_oven) detail::append_oven(scaled, out);
  }
  if (at_oven == nullptr) detail::append_oven(scaled, out);
  return out;
}

/// Whether the work is a setting of the oven of which no one knows how long it takes.
inline bool has_unknown_time(const Work& work) {
  return work.kind == WorkKind::oven && !work.takes;
}

}  // namespace platewright
