// SPDX-License-Identifier: MIT
#pragma once
// A vessel as a cook names it.

#include <string_view>

#include "platewright/book/tables.hpp"
#include "platewright/recipe/vessel_fill.hpp"

namespace platewright {

/// `full-size hotel pan, 4 in, holds 2 legs`, `tub of 12 qt`, `kettle, holds 72 L`, `tray of 18 x
/// 26 in`: a vessel of the table by any of its names, or one with its size behind it, and what goes
/// into one, counted in `content` (a piece, or portions) or as the capacity it is filled to. Of
/// several volumes of one row of the table, the one a cook can fill (usable before brimful); of a
/// whole capacity, as behind `of`, the usual share is filled. A vessel that is neither has no size,
/// which is enough where the recipe is made in no other. Throws Failure for a text of another form
/// and for counts and sizes that are not above 0.
RecipeVessel read_vessel(std::string_view text, std::string_view content, const Tables& tables,
                         MeasuringSystem system);

}  // namespace platewright
