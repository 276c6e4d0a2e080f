// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/event/recipe_work.hpp.

#include <cstdint>

#include "platewright/event/recipe_work.hpp"

namespace platewright {

namespace detail {

PLATEWRIGHT_BODY std::chrono::minutes whole_minutes(const Duration& time) {
  const Rational days = time.in(units::day);
  if (days > 366) throw Failure(problems::step_too_long(as_decimal(days, 0)));
  return std::chrono::minutes(static_cast<std::int64_t>(ceiling_of(time.in(units::minute))));
}

PLATEWRIGHT_BODY void set_time(Work& work, const std::optional<TimeSpan>& takes) {
  if (!takes) return;
  work.takes = takes;
  work.least = whole_minutes(takes->least);
  work.most = whole_minutes(takes->most);
}

PLATEWRIGHT_BODY void append_oven(const ScaledRecipe& scaled, std::vector<Work>& out) {
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

PLATEWRIGHT_BODY std::vector<Work> work_of(const ScaledRecipe& scaled) {
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

}  // namespace platewright
