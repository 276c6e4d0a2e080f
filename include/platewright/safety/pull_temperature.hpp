// SPDX-License-Identifier: MIT
#pragma once
// The temperature at which a cook takes the meat out, beside what the authorities ask.

#include <algorithm>
#include <optional>
#include <string>
#include <vector>

#include "platewright/safety/safety_table.hpp"

namespace platewright {

/// Whether food service has to print a consumer advisory (FDA Food Code 2022, 3-603.11).
enum class Advisory {
  no_minimum,   ///< the table asks nothing of this kind of food
  not_needed,   ///< the minimum is reached
  unless_held,  ///< below the minimum, but a roast that is held long enough needs none
  needed,       ///< below the minimum, and no hold makes up for it
  cook_on,      ///< below the minimum, and no notice to guests makes such food safe
};

/// One authority's minimum against the pull temperature.
struct MinimumCheck {
  MinimumTemperature minimum;
  bool reached = false;
  TemperatureStep short_by;  ///< 0 where it is reached
  bool rests_enough = true;  ///< the rest is as long as the authority asks
};

struct PullCheck {
  FoodKind kind;
  Temperature pull = Temperature::celsius(0);
  std::optional<Duration> rest;
  std::vector<MinimumCheck> checks;  ///< one for each authority
  /// How long a whole roast has to be kept at this temperature instead (FDA Food Code 2022,
  /// 3-401.11(B)); nothing for other food and below its table.
  std::optional<RoastHold> hold;
  Advisory advisory = Advisory::no_minimum;
  /// The highest minimum that counts and is not reached; nothing where all of them are.
  std::optional<MinimumTemperature> cook_to;
};

namespace detail {

/// The highest minimum that is not reached. The Food Code's decide; those for consumers only where
/// it has no row for this food.
inline std::optional<MinimumTemperature> minimum_missed(const std::vector<MinimumCheck>& checks) {
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

/// What a sheet prints beside the pull temperature; it never refuses one. The rise after the oven
/// is not counted, as no one can promise it.
inline PullCheck check_pull_temperature(const FoodKind& kind, const Temperature& pull,
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
