// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/kitchen/rounding_steps.hpp.

#include "platewright/kitchen/rounding_steps.hpp"

namespace platewright {

PLATEWRIGHT_BODY Rational KitchenSteps::rounded(const Rational& value, Rounding rounding) const {
  Rational step;
  for (const KitchenStep& row : steps) {
    if (row.from <= value) step = row.step;
  }
  if (step == 0) return value;
  const Rational near = round_to(value, step, rounding);
  return near == 0 && value > 0 && rounding != Rounding::down ? step : near;
}

}  // namespace platewright
