#pragma once
// The card that a kitchen cooks from.

#include "platewright/book/book.hpp"
#include "platewright/card/sheet.hpp"
#include "platewright/event/production.hpp"

namespace platewright {

struct CardOptions {
  MeasuringSystem system = MeasuringSystem::us;  ///< of the measures and weights on the card
  bool metric_too = false;                       ///< a metric column beside them
};

/// One recipe at its new size: how much it makes, ingredients by component with measure, weight and
/// weight as purchased, oven, critical temperatures, steps with the amounts they use, allergens.
Sheet recipe_card(const ScaledRecipe& scaled, const Book& book, const CardOptions& options = {});

/// All cards of an event: sub-recipes first, in the order they are made, then the dishes.
Sheet event_cards(const Event& event, const Production& production, const Book& book,
                  const CardOptions& options = {});

}  // namespace platewright
