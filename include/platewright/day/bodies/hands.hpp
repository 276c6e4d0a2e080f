// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/day/hands.hpp.

#include "platewright/day/hands.hpp"

namespace platewright {

PLATEWRIGHT_BODY bool goes_by_itself(StepKind kind) {
  switch (kind) {
    case StepKind::thaw:
    case StepKind::brine:
    case StepKind::marinate:
    case StepKind::dry_salt:
    case StepKind::out_of_the_refrigerator:
    case StepKind::roast:
    case StepKind::simmer:
    case StepKind::chill:
    case StepKind::reheat:
    case StepKind::hold_hot:
    case StepKind::hold_cold:
    case StepKind::rest:
      return true;
    case StepKind::sear:
    case StepKind::carve:
    case StepKind::plate:
    case StepKind::serve:
      break;
  }
  return false;
}

namespace detail {

PLATEWRIGHT_BODY std::size_t people_of(const std::optional<TimeGrowth>& growth) {
  return growth ? static_cast<std::size_t>(whole_count(growth->people)) : 1;
}

}  // namespace detail

PLATEWRIGHT_BODY Hands hands_of(const Work& work, const ScaledRecipe& scaled) {
  Hands out;
  if (work.kind != WorkKind::step) return out;
  const MethodStep& step = *work.step;
  const StepNeeds& needs = step.needs;
  out.role = needs.role;
  if (const auto hands = hands_time(step, scaled)) {
    out.people = detail::people_of(needs.hands_for);
    out.time = detail::whole_minutes(*hands);
    return out;
  }
  if (step.control && goes_by_itself(step.control->kind)) return out;
  out.people = detail::people_of(step.grows);
  out.time = work.least;
  return out;
}

}  // namespace platewright
