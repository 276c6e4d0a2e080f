// SPDX-License-Identifier: MIT
#pragma once
// Whether what goes into the fullest vessel fits it.

#include <optional>

#include "platewright/problem/body.hpp"
#include "platewright/recipe/scaled_recipe.hpp"

namespace platewright {

/// More than the fullest vessel holds: of a brine or marinade, or of what the recipe makes.
struct Overflow {
  Volume liquid;
  /// What one vessel holds, less the meat where its volume is known.
  Volume room;
  bool less_the_meat = false;
  bool covers = true;  ///< what covers the meat; else what the recipe makes
};

namespace detail {

/// The share of what covers that goes into one of `part`: by the room left in it, or else as the
/// content.
Rational cover_share(const ScaledRecipe& scaled, const FilledAlike& part, const RecipeBook& book);

}  // namespace detail

/// What is too much in the fullest vessel of the plan: of what the recipe makes, or of the lines
/// that are scaled by cover beside the meat. Nothing where it fits, or where no volume of the
/// vessel is known.
std::optional<Overflow> overflow_of(const ScaledRecipe& scaled, const RecipeBook& book);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/recipe/bodies/cover_check.hpp"
#endif
