// SPDX-License-Identifier: MIT
#pragma once
// What the tested pieces of a recipe take up in a vessel.

#include <optional>

#include "platewright/problem/body.hpp"
#include "platewright/recipe/piece_line.hpp"

namespace platewright {

/// The volume of one tested piece: its weight by the ingredient's own density. Nothing where the
/// recipe names no pieces or the density is not known.
std::optional<Volume> piece_volume(const Recipe& recipe, const RecipeBook& book);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/recipe/bodies/piece_volume.hpp"
#endif
