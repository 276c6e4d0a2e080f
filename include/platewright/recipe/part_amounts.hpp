// SPDX-License-Identifier: MIT
#pragma once
// What goes into each vessel, or into each batch.

#include <cstddef>

#include "platewright/problem/body.hpp"
#include "platewright/recipe/cover_check.hpp"

namespace platewright {

/// Which parts of a plan: its vessels, or its batches.
enum class PartOf { vessels, batches };

/// The vessels of a plan, where it names one, or its batches.
const Filling* filling_of(const ScalePlan& plan, PartOf what);
const Filling* filling_of(const ScalePlan&&, PartOf) = delete;

/// The share of a line that goes into one of `part`: of what goes with each vessel (or batch) as
/// much into each; of what covers, by the room that is left; of a share of other lines, as their
/// weight; else as the content. Over all vessels they add up to 1. Throws Failure as
/// `tested_amount` does.
Rational share_in_part(const ScaledRecipe& scaled, std::size_t index, PartOf what,
                       const FilledAlike& part, const RecipeBook& book);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/recipe/bodies/part_amounts.hpp"
#endif
