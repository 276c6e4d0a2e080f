// SPDX-License-Identifier: MIT
#pragma once
// The portions that whole pieces serve by the yield of their cut, beside those the recipe names.

#include <optional>

#include "platewright/problem/body.hpp"
#include "platewright/recipe/piece_line.hpp"

namespace platewright {

/// Weight of the tested pieces as purchased x yield of the cut / weight of a portion. Nothing where
/// no pieces of a cut were tested, no weight of a portion is named, the portion holds more than the
/// meat, or no yield of the cut is known.
std::optional<Rational> portions_by_yield(const Recipe& recipe, const RecipeBook& book);

/// The portions that one tested batch is counted on for: those the recipe names or, where they are
/// fewer, those that its meat serves by the yield of the cut, so that no guest goes short.
std::optional<Rational> counted_portions(const Recipe& recipe, const RecipeBook& book);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/recipe/bodies/portions_by_yield.hpp"
#endif
