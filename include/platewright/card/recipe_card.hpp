// SPDX-License-Identifier: MIT
#pragma once
// The card that a kitchen cooks from.

#include <optional>
#include <string>

#include "platewright/book/book.hpp"
#include "platewright/card/sheet.hpp"
#include "platewright/event/production.hpp"

namespace platewright {

struct CardOptions {
  MeasuringSystem system = MeasuringSystem::us;   ///< of the measures and weights on the card
  std::optional<Kitchen> kitchen = std::nullopt;  ///< instead of the one that the book declares
  std::optional<MeasuringSystem> beside = std::nullopt;  ///< a column of other measures
  bool cost = false;                                     ///< the food cost, in all and of a portion
  bool large = false;  ///< for large print: weights, amounts and oven before all else, no bars
  std::string date;    ///< as it is printed on a card that belongs to no event
};

/// One recipe at its new size: how much it makes, ingredients by component with measure, weight and
/// weight as purchased, oven, critical temperatures, steps with the amounts they use, allergens.
Sheet recipe_card(const ScaledRecipe& scaled, const Book& book, const CardOptions& options = {});

/// The cards of a production of one recipe: what it uses first, in the order they are made.
Sheet production_cards(const Production& production, const Book& book,
                       const CardOptions& options = {});

/// All cards of an event: sub-recipes first, in the order they are made, then the dishes.
Sheet event_cards(const Event& event, const Production& production, const Book& book,
                  const CardOptions& options = {});

}  // namespace platewright
