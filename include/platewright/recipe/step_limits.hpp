// SPDX-License-Identifier: MIT
#pragma once
// The rules that go with a step of a recipe.

#include <optional>
#include <string>
#include <vector>

#include "platewright/problem/body.hpp"
#include "platewright/recipe/piece_line.hpp"
#include "platewright/safety/safety_table.hpp"

namespace platewright {

/// How long a step thaws by an authority's rate, and the weight of a piece where it is known.
struct StepThawing {
  ThawingRate rate;
  std::optional<Mass> piece;

  std::optional<ThawingTime> time() const;
};

struct StepLimits {
  std::vector<StepRule> rules;  ///< in the order of the table
  std::optional<StepThawing> thawing;
};

/// Nothing for a step that says no kind. `piece_weight` is that of the pieces that are cooked; that
/// of the tested ones where there is none. It never fails.
StepLimits limits_of(const MethodStep& step, const Recipe& recipe, const RecipeBook& book,
                     const SafetyTable& table, const std::optional<Mass>& piece_weight);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/recipe/bodies/step_limits.hpp"
#endif
