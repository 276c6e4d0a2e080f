// SPDX-License-Identifier: MIT
#pragma once
// How much of a recipe goes into one vessel.

#include <optional>
#include <string>

#include "platewright/number/round.hpp"
#include "platewright/problem/body.hpp"
#include "platewright/recipe/power.hpp"
#include "platewright/recipe/recipe.hpp"

namespace platewright {

/// What goes into vessels and batches in the tested batch: pieces, else portions, else the batch.
Rational tested_content(const Recipe& recipe);

/// What the whole recipe fills: nothing where it makes no capacity, or whole pieces, which fill a
/// vessel by their number.
std::optional<Volume> filling_volume(const Recipe& recipe);

/// What of a vessel decides how much goes into it.
enum class CountedBy { volume, bottom };

/// Nothing where its size does not decide: the cook says what one holds, or it is the one that held
/// the tested batch.
std::optional<CountedBy> counted_by(const Recipe& recipe, const RecipeVessel& vessel);

/// The most that goes into one vessel, counted as `tested_content` is: what the cook says it holds;
/// else by the capacity that the recipe makes; else as much more than the vessel it was tested in
/// as it is larger, by volume, or by the bottom for a tray. Of pieces as many whole ones, each
/// `heavier` than the tested ones. Throws Failure where no size is known to go by, and where not
/// one piece goes in.
Rational vessel_capacity(const Recipe& recipe, const RecipeVessel& vessel,
                         const Rational& heavier = 1);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/recipe/bodies/vessel_capacity.hpp"
#endif
