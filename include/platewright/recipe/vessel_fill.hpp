// SPDX-License-Identifier: MIT
#pragma once
// The vessel that a recipe is cooked, marinated or brined in.

#include <optional>
#include <string>

#include "platewright/kitchen/pan_bottom.hpp"
#include "platewright/number/rational.hpp"
#include "platewright/problem/body.hpp"
#include "platewright/problem/catalogue/vessels.hpp"
#include "platewright/problem/failure.hpp"
#include "platewright/quantity/quantity.hpp"
#include "platewright/quantity/units.hpp"

namespace platewright {

/// How far a cook fills a vessel of which the whole capacity is known, so that it can be carried,
/// stirred and boiled: nine tenths. Common practice, no source.
inline Rational usual_fill() {
  return fraction(9, 10);
}

/// `pan: full-size hotel pan, 4 in, holds 2 legs`.
struct RecipeVessel {
  std::string name;
  /// What it holds; nothing where neither the cook nor a table says.
  std::optional<Volume> volume;
  /// What goes into one: pieces of a recipe that cooks whole pieces, else portions. Where the cook
  /// does not say, its size decides, or else the tested batch.
  std::optional<Rational> holds;
  std::string source;  ///< whose figure the size is; empty for the cook's own
  std::optional<PanBottom> bottom = std::nullopt;
  Rational fill = 1;  ///< the share of its volume that a cook fills where the size decides
};

/// The volume up to which a cook fills it where the size decides how much goes in.
std::optional<Volume> filled_volume(const RecipeVessel& vessel);

/// What is left to be filled in one vessel around meat that takes up `meat`. Throws Failure where
/// nothing is left.
Volume room_around(const RecipeVessel& vessel, const Volume& meat);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/recipe/bodies/vessel_fill.hpp"
#endif
