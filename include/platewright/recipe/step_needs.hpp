// SPDX-License-Identifier: MIT
#pragma once
// What a step asks of the kitchen beside its time.

#include <optional>
#include <string>

#include "platewright/quantity/units.hpp"
#include "platewright/recipe/time_growth.hpp"

namespace platewright {

/// `hands: 4 min per leg by 2 people`, `role: cook`, `hobs: 2`.
struct StepNeeds {
  std::optional<Duration> hands = {};        ///< at its beginning; nothing where not said
  std::optional<TimeGrowth> hands_for = {};  ///< what `hands` is for, where it is not the whole
  std::string role = {};                     ///< who does it; empty for anyone
  std::optional<Rational> hobs = {};
};

}  // namespace platewright
