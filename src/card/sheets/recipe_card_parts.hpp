// SPDX-License-Identifier: MIT
#pragma once
// The parts of a recipe card that need the book: rows and weights.

#include <optional>
#include <string>
#include <vector>

#include "platewright/book/kitchen_for.hpp"
#include "platewright/card/kitchen_view.hpp"
#include "platewright/card/recipe_card.hpp"

namespace platewright::card {

/// The measures of the card, and the others beside them if asked for.
struct CardViews {
  CardViews(const CardOptions& options, const Book& book)
      : main(options.kitchen ? *options.kitchen : kitchen_for(book, options.system)) {
    if (options.beside) beside.emplace(kitchen_for(book, *options.beside));
  }

  KitchenView main;
  std::optional<KitchenView> beside;
};

/// `salt, coarse (2 % of water)`: name and preparation, the stage that the amount is written at,
/// the lines that it is a share of.
std::string line_name(const RecipeLine& line);

/// What has to be bought for the line, rounded up; empty for a recipe, and where nothing is lost or
/// it can't be weighed.
Cell weight_as_purchased(const ScaledLine& line, const KitchenView& view);

/// Of a line that covers the meat where no volume is known: that the factor stands for it.
std::string cover_remark(const ScaledRecipe& scaled, const RecipeLine& line);

/// What to measure out: of a line that is held back, the share that goes in at first.
const LineAmount& first_amount(const ScaledLine& line);

/// The same on another scale, jug or tape; empty where it is none of these.
Cell amount_beside(const ScaledLine& line, const KitchenView& beside);

/// What to measure out of a line: whole pieces for the roast itself, else its measure; of a line
/// that is held back, the share that goes in at first.
Cell amount_to_take(const ScaledRecipe& scaled, const ScaledLine& line, const Book& book,
                    const KitchenView& view);

/// Name, preparation, and what a cook needs to know of the line: what is held back, a part of a
/// whole thing, a brine by weight. The source of a published rule is cited on the sheet.
Cell described_cell(Sheet& sheet, const ScaledRecipe& scaled, const ScaledLine& line,
                    const Book& book, const KitchenView& view);

/// Weight, measure and name of one line, for large print.
Row large_ingredient_row(Sheet& sheet, const ScaledRecipe& scaled, const ScaledLine& line,
                         const Book& book, const KitchenView& view);

/// Measure, weight, weight as purchased, name and preparation of one line.
Row ingredient_row(Sheet& sheet, const ScaledRecipe& scaled, const ScaledLine& line,
                   const Book& book, const CardViews& views);

/// The weight of the meat at each rung, from the weight bought to the weight served; nothing for a
/// recipe without a cut. Whose yields they are is cited on the sheet.
std::optional<Bars> meat_weights(Sheet& sheet, const ScaledRecipe& scaled, const KitchenView& view);

}  // namespace platewright::card
