// SPDX-License-Identifier: MIT
#pragma once
// What a step says of itself so that it can be checked.

#include <optional>
#include <vector>

#include "platewright/problem/body.hpp"
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
bool takes_place(StepKind kind);

/// Whether it can say at which temperature it stands.
bool takes_temperature(StepKind kind);

/// Whether it can say which temperatures it comes to.
inline bool takes_reached(StepKind kind) {
  return kind == StepKind::chill || kind == StepKind::reheat;
}

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/recipe/bodies/step_control.hpp"
#endif
