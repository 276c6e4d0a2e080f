// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/recipe/spice_factor.hpp.

#include "platewright/recipe/spice_factor.hpp"

namespace platewright {

PLATEWRIGHT_BODY Rational spice_factor(ScalingRule rule, const Rational& factor) {
  switch (rule) {
    case ScalingRule::spice_on_double:
      return factor <= 1 ? factor : 1 + (factor - 1) / 2;
    case ScalingRule::herb_formula:
      return factor <= 2 ? factor : 2 + (factor - 2) / 2;
    case ScalingRule::hot_pepper:
      return factor <= 2 ? factor : 2 + (factor - 2) / 4;
    case ScalingRule::proportional:
    case ScalingRule::by_surface:
    case ScalingRule::by_piece:
    case ScalingRule::by_pan:
    case ScalingRule::by_batch:
    case ScalingRule::by_cover:
    case ScalingRule::held_back:
    case ScalingRule::fixed:
      break;
  }
  return factor;
}

}  // namespace platewright
