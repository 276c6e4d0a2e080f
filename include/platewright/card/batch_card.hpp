#pragma once
// One recipe at several sizes, side by side.

#include <vector>

#include "platewright/card/recipe_card.hpp"

namespace platewright {

/// A column for each size: what it makes, how many roasts and pans, and every line's amount by its
/// own rule. The method, the oven and the allergens stand on the card of one size; the columns are
/// for weighing out. All sizes are of one recipe; none gives an empty table.
Sheet batch_card(const std::vector<ScaledRecipe>& sizes, const Book& book,
                 const CardOptions& options = {});

}  // namespace platewright
