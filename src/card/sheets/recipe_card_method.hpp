// SPDX-License-Identifier: MIT
#pragma once
// The method of a recipe card.

#include "card/sheets/recipe_card_parts.hpp"

namespace platewright::card {

/// The steps, each with its time and the scaled amounts that it uses.
Steps method(const ScaledRecipe& scaled, const CardViews& views);

/// The same for any size: what a step uses without its amounts.
Steps method_of_any_size(const Recipe& recipe);

}  // namespace platewright::card
