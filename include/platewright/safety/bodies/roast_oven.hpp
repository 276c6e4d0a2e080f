// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/safety/roast_oven.hpp.

#include <algorithm>

#include "platewright/safety/roast_oven.hpp"

namespace platewright {

PLATEWRIGHT_BODY std::optional<RoastOvenCheck> check_roast_oven(
    const std::vector<Temperature>& settings, const std::optional<Mass>& weight,
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
