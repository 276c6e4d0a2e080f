// SPDX-License-Identifier: MIT
#pragma once
// One recipe at several sizes, side by side.

#include <vector>

#include "platewright/card/recipe_card.hpp"

namespace platewright {

/// A column for each size: what it makes, how many roasts and pans, and every line's amount by its
/// own rule; then, once for all sizes, what a cook needs beside them: the oven, the temperatures,
/// the steps with the names of what they use, the allergens. All sizes are of one recipe whose
/// pieces have one weight (the time in the oven follows it); none gives an empty table.
Sheet batch_card(const std::vector<ScaledRecipe>& sizes, const Book& book,
                 const CardOptions& options = {});

}  // namespace platewright
