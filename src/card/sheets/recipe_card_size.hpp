// SPDX-License-Identifier: MIT
#pragma once
// The parts of a recipe card that say how much it is and how it is roasted.

#include <optional>
#include <string>

#include "platewright/card/kitchen_view.hpp"
#include "platewright/card/recipe_card.hpp"

namespace platewright::card {

/// `4 legs`, `1 leg`, `3 1/4 legs`; what is no quarter of a piece has two decimals, so that a part
/// of a roast never shows as none or as one more: `1.94 ribs`.
std::string pieces_text(const TestedPieces& tested, const Rational& pieces);

/// `90 portions of 6 oz`; an empty cell for a recipe that does not say what it makes.
Cell makes_cell(const ScaledRecipe& scaled, const KitchenView& view);
/// `9 legs of 7 lb 8 oz`; an empty cell for a recipe without pieces.
Cell pieces_cell(const ScaledRecipe& scaled, const KitchenView& view);
/// `3 x tub (4 + 3 + 3 legs)`; an empty cell for a recipe without a vessel.
Cell vessels_cell(const ScaledRecipe& scaled, const KitchenView& view);
/// `3 of at most x 4 (4 + 3 + 3 legs)`; an empty cell for a recipe without a largest batch.
Cell batches_cell(const ScaledRecipe& scaled, const KitchenView& view);
/// `x 8.4`.
Cell factor_cell(const Rational& factor);

/// What it makes, of how many roasts, in how many pans and batches, by which factor, and
/// what decided it where an amount on hand did.
Facts size_facts(const ScaledRecipe& scaled, const KitchenView& view);

/// A warning where what covers the meat does not fit its vessels.
std::optional<Box> overflow_box(const ScaledRecipe& scaled, const Book& book,
                                const KitchenView& view);

/// What the food costs, in all and for a portion.
void add_cost(Facts& facts, const ScaledRecipe& scaled, const Book& book);

/// The settings of the oven and the rest, a scaled time marked as an estimate.
Facts oven_facts(const ScaledRecipe& scaled, const KitchenView& view);

}  // namespace platewright::card
