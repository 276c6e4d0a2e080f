#pragma once
// A vessel as a cook names it.

#include <string_view>

#include "platewright/book/tables.hpp"
#include "platewright/recipe/vessel_fill.hpp"

namespace platewright {

/// `full-size hotel pan, 4 in, holds 2 legs` or `tub of 12 qt, holds 3 legs`: a vessel of the table
/// by any of its names, or one with its volume behind it, and what goes into one, counted in
/// `content` (a piece, or portions). Of several volumes of one row of the table, the one a cook can
/// fill (usable before brimful). A vessel that is neither has no volume, which is enough to count
/// vessels. Throws Failure for a text of another form and for counts and volumes that are not above
/// 0.
RecipeVessel read_vessel(std::string_view text, std::string_view content, const Tables& tables,
                         MeasuringSystem system);

}  // namespace platewright
