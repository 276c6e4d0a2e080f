// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/recipe/step_control.hpp.

#include "platewright/recipe/step_control.hpp"

namespace platewright {

PLATEWRIGHT_BODY bool takes_place(StepKind kind) {
  switch (kind) {
    case StepKind::thaw:
    case StepKind::brine:
    case StepKind::marinate:
    case StepKind::dry_salt:
    case StepKind::chill:
    case StepKind::reheat:
    case StepKind::hold_hot:
    case StepKind::hold_cold:
    case StepKind::rest:
      return true;
    case StepKind::out_of_the_refrigerator:
    case StepKind::sear:
    case StepKind::roast:
    case StepKind::simmer:
    case StepKind::carve:
    case StepKind::plate:
    case StepKind::serve:
      break;
  }
  return false;
}

PLATEWRIGHT_BODY bool takes_temperature(StepKind kind) {
  return kind == StepKind::thaw || kind == StepKind::brine || kind == StepKind::marinate ||
         kind == StepKind::dry_salt || kind == StepKind::hold_hot || kind == StepKind::hold_cold;
}

}  // namespace platewright
