// SPDX-License-Identifier: MIT
#pragma once
// Steps that say their kind: the rules beside them, and what goes against one.

#include <optional>
#include <string>
#include <vector>

#include "platewright/book/book.hpp"
#include "platewright/card/blocks.hpp"
#include "platewright/event/dish_notices.hpp"
#include "platewright/recipe/scaled_recipe.hpp"
#include "platewright/recipe/step_words.hpp"

namespace platewright::card {

/// How a sheet writes the figures of a rule.
StepFigures step_figures();

/// The limits of every step that has one, with their sources, at the size of the card; nothing
/// where no step says its kind.
std::optional<Table> step_limits_table(const ScaledRecipe& scaled, const Book& book);

/// The steps of the recipe that go against a rule, at the size of the card.
std::vector<UnsafeStep> unsafe_steps_of(const ScaledRecipe& scaled, const Book& book);

/// The steps that go against a rule, a line each; nothing where there is none.
std::optional<Box> unsafe_steps_box(const std::vector<UnsafeStep>& steps);

}  // namespace platewright::card
