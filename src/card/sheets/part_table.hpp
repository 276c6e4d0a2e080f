// SPDX-License-Identifier: MIT
#pragma once
// What goes into each vessel and each batch, on a recipe card.

#include <optional>
#include <string>

#include "card/sheets/recipe_card_parts.hpp"
#include "platewright/recipe/part_amounts.hpp"

namespace platewright::card {

/// `4 + 3 + 3 legs`, `4 legs in each of 10, 3 legs in each of 3`, `2 legs in each`; where the
/// recipe makes a capacity, `6.8 L in each`.
std::string parts_text(const ScaledRecipe& scaled, const Filling& filling, const KitchenView& view);

/// Every line's amount in one vessel (or batch), a column for each way they are filled; nothing for
/// a single one, and for a recipe that names no vessel (or no largest batch).
std::optional<Table> part_table(const ScaledRecipe& scaled, PartOf what, const Book& book,
                                const KitchenView& view);

/// Whose figure the size of the vessels is and how far they are filled, where that decides how many
/// there are.
void cite_vessel(Sheet& sheet, const ScaledRecipe& scaled);

}  // namespace platewright::card
