// SPDX-License-Identifier: MIT
#pragma once
// The oven that a whole meat roast needs before its hold counts as cooking.

#include <algorithm>
#include <optional>
#include <vector>

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
inline std::optional<RoastOvenCheck> check_roast_oven(const std::vector<Temperature>& settings,
                                                      const std::optional<Mass>& weight,
                                                      const SafetyTable& table) {
  RoastOvenCheck out;
  out.under_ten_pounds = !weight || *weight < Mass::of(10, units::pound);
  const auto still =
      table.limit(out.under_ten_pounds ? "oven, still, small roast" : "oven, still, large roast");
  const auto convection = table.limit(out.under_ten_pounds ? "oven, convection, small roast"
                                                           : "oven, convection, large roast");
  const auto humid = table.limit("oven, humid");
  const auto known = [](const std::optional<SafetyLimit>& limit) {
    return limit && limit->temperature;
  };
  if (!known(still) || !known(convection) || !known(humid)) {
    return std::nullopt;
  }
  if (settings.empty()) return std::nullopt;
  out.still = *still;
  out.convection = *convection;
  out.humid = *humid;
  const auto [lowest, highest] = std::minmax_element(settings.begin(), settings.end());
  out.still_meets = *lowest >= still->temperature->at;
  out.convection_meets = *lowest >= convection->temperature->at;
  out.humid_meets = *highest <= humid->temperature->at;
  return out;
}

}  // namespace platewright
