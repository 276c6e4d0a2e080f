// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/day/oven_task.hpp.

#include "platewright/day/oven_task.hpp"

namespace platewright {

PLATEWRIGHT_BODY Minute OvenTask::lasts() const {
  Minute out = 0;
  for (const OvenSetting& setting : settings) out += setting.lasts;
  return out;
}

}  // namespace platewright
