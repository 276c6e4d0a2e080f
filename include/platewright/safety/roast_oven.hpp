// SPDX-License-Identifier: MIT
#pragma once
// The oven that a whole meat roast needs before its hold counts as cooking.

#include <optional>
#include <vector>

#include "platewright/problem/body.hpp"
#include "platewright/quantity/units.hpp"
#include "platewright/safety/safety_table.hpp"

namespace platewright {

/// What FDA Food Code 2022, 3-401.11(B)(2), asks of the oven, and whether the recipe's settings
/// meet it. A still, dry oven and a convection oven have to be at their limit or above, a humid one
/// at it or below, from the first setting to the last.
struct RoastOvenCheck {
  bool under_ten_pounds = true;
  SafetyLimit still;
  SafetyLimit convection;
  SafetyLimit humid;
  bool still_meets = false;
  bool convection_meets = false;
  bool humid_meets = false;
};

/// `weight` is that of one roast; where it is not known, the limits for a small one count, which
/// are the stricter. Nothing where the table has no such limits or the recipe names no oven.
std::optional<RoastOvenCheck> check_roast_oven(const std::vector<Temperature>& settings,
                                               const std::optional<Mass>& weight,
                                               const SafetyTable& table);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/safety/bodies/roast_oven.hpp"
#endif
