#pragma once
// The vessel that a recipe is cooked, marinated or brined in, and how many of them a batch fills.

#include <optional>
#include <string>

#include "platewright/number/rational.hpp"
#include "platewright/number/round.hpp"
#include "platewright/problem/catalogue/vessels.hpp"
#include "platewright/problem/failure.hpp"
#include "platewright/quantity/quantity.hpp"
#include "platewright/quantity/units.hpp"

namespace platewright {

/// `pan: full-size hotel pan, 4 in, holds 2 legs`.
struct RecipeVessel {
  std::string name;
  /// What it holds, up to where a cook fills it; nothing where neither the cook nor a table says.
  std::optional<Volume> volume;
  /// What goes into one: pieces of a recipe that cooks whole pieces, else portions. Where the cook
  /// does not say, the tested batch.
  std::optional<Rational> holds;
  std::string source;  ///< whose figure the volume is; empty for the cook's own
};

/// How many vessels `content` fills, each holding `holds`: whole ones, rounded up.
inline Rational vessels_for(const Rational& content, const Rational& holds) {
  return up_to(content / holds, 1);
}

/// What is left to be filled in `vessels` vessels of `volume` each around meat that takes up
/// `meat`. Throws Failure where nothing is left.
inline Volume room_around(const RecipeVessel& vessel, const Rational& vessels, const Volume& meat) {
  const Volume room = *vessel.volume * vessels - meat;
  if (room <= Volume()) throw Failure(problems::vessel_too_small(vessel.name));
  return room;
}

}  // namespace platewright
