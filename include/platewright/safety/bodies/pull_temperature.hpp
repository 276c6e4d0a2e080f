// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/safety/pull_temperature.hpp.

#include <algorithm>

#include "platewright/safety/pull_temperature.hpp"

namespace platewright {

namespace detail {

/// The highest minimum that is not reached. The Food Code's decide; those for consumers only where
/// it has no row for this food.
PLATEWRIGHT_BODY std::optional<MinimumTemperature> minimum_missed(
    const std::vector<MinimumCheck>& checks) {
  const auto for_service = [](const MinimumCheck& check) {
    return check.minimum.audience == Audience::food_service;
  };
  const bool any = std::any_of(checks.begin(), checks.end(), for_service);
  std::optional<MinimumTemperature> out;
  for (const MinimumCheck& check : checks) {
    if (check.reached || (any && !for_service(check))) continue;
    if (!out || out->at < check.minimum.at) out = check.minimum;
  }
  return out;
}

}  // namespace detail

PLATEWRIGHT_BODY PullCheck check_pull_temperature(const FoodKind& kind, const Temperature& pull,
                                                  const std::optional<Duration>& rest,
                                                  const SafetyTable& table) {
  PullCheck out{kind, pull, rest, {}, {}, Advisory::no_minimum, {}};
  for (const MinimumTemperature& minimum : table.minimums_for(kind)) {
    MinimumCheck check{minimum, pull >= minimum.at, {}};
    if (!check.reached) check.short_by = minimum.at - pull;
    check.rests_enough = !minimum.rest || rest.value_or(Duration{}) >= *minimum.rest;
    out.checks.push_back(check);
  }
  const Undercooked below = table.undercooked(kind);
  if (below == Undercooked::held_or_advised) out.hold = table.roast_hold_at(pull);
  if (out.checks.empty()) return out;
  out.cook_to = detail::minimum_missed(out.checks);
  if (!out.cook_to) {
    out.advisory = Advisory::not_needed;
  } else if (below == Undercooked::never) {
    out.advisory = Advisory::cook_on;
  } else {
    out.advisory = out.hold ? Advisory::unless_held : Advisory::needed;
  }
  return out;
}

}  // namespace platewright
