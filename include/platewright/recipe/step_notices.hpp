// SPDX-License-Identifier: MIT
#pragma once
// The steps of a recipe that go against a rule of the table.

#include <optional>
#include <string>
#include <vector>

#include "platewright/problem/body.hpp"
#include "platewright/recipe/detail/step_faults.hpp"

namespace platewright {

/// The notices of one recipe, in the order of its steps. Every sheet and every check of a book says
/// these and no others; a step that does not say its kind has none. `piece_weight` is that of the
/// pieces that are cooked, if not of the tested ones. It never fails.
std::vector<StepNotice> step_notices(const Recipe& recipe, const RecipeBook& book,
                                     const SafetyTable& table,
                                     const std::optional<Mass>& piece_weight = {});

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/recipe/bodies/step_notices.hpp"
#endif
