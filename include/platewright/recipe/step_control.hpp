// SPDX-License-Identifier: MIT
#pragma once
// What a step says of itself so that it can be checked.

#include <optional>
#include <vector>

#include "platewright/quantity/temperature.hpp"
#include "platewright/safety/step_kind.hpp"
#include "platewright/safety/step_place.hpp"

namespace platewright {

/// A temperature that the food comes to, and the time from the beginning of the step until then;
/// none where it is at the end of the step.
struct ReachedTemperature {
  Temperature at = Temperature::celsius(0);
  std::optional<Duration> in;
};

/// There is no place and no temperature without a kind, as no rule would be asked for them.
struct StepControl {
  StepKind kind = StepKind::serve;
  std::optional<StepPlace> where = {};
  std::optional<Temperature> at = {};  ///< what the food stands at, or the water that it lies in
  std::vector<ReachedTemperature> reaches = {};  ///< in the order of their times
};

/// Whether a step of this kind can say where it stands.
inline bool takes_place(StepKind kind) {
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

/// Whether it can say at which temperature it stands.
inline bool takes_temperature(StepKind kind) {
  return kind == StepKind::thaw || kind == StepKind::brine || kind == StepKind::marinate ||
         kind == StepKind::dry_salt || kind == StepKind::hold_hot || kind == StepKind::hold_cold;
}

/// Whether it can say which temperatures it comes to.
inline bool takes_reached(StepKind kind) {
  return kind == StepKind::chill || kind == StepKind::reheat;
}

}  // namespace platewright
