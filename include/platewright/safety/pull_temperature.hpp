// SPDX-License-Identifier: MIT
#pragma once
// The temperature at which a cook takes the meat out, beside what the authorities ask.

#include <optional>
#include <string>
#include <vector>

#include "platewright/problem/body.hpp"
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

/// What a sheet prints beside the pull temperature; it never refuses one. The rise after the oven
/// is not counted, as no one can promise it.
PullCheck check_pull_temperature(const FoodKind& kind, const Temperature& pull,
                                 const std::optional<Duration>& rest, const SafetyTable& table);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/safety/bodies/pull_temperature.hpp"
#endif
