// SPDX-License-Identifier: MIT
#pragma once
// How much of a recipe goes into one vessel.

#include <optional>
#include <string>

#include "platewright/number/round.hpp"
#include "platewright/recipe/power.hpp"
#include "platewright/recipe/recipe.hpp"

namespace platewright {

/// What goes into vessels and batches in the tested batch: pieces, else portions, else the batch.
inline Rational tested_content(const Recipe& recipe) {
  if (recipe.tested) return recipe.tested->count;
  return recipe.makes.portions.value_or(1);
}

/// What the whole recipe fills: nothing where it makes no capacity, or whole pieces, which fill a
/// vessel by their number.
inline std::optional<Volume> filling_volume(const Recipe& recipe) {
  const std::optional<Amount> whole = whole_amount(recipe);
  if (recipe.tested || !whole || whole->dimension() != UnitDimension::volume) return std::nullopt;
  return to_volume(*whole);
}

namespace detail {

/// How much more of the same food one vessel takes than another, and whether that goes by volume;
/// else it goes by the bottom.
struct VesselRatio {
  Rational larger;
  bool by_volume = true;
};

inline std::optional<VesselRatio> vessel_ratio(const RecipeVessel& vessel,
                                               const RecipeVessel& tested_in) {
  if (vessel.volume && tested_in.volume) {
    return VesselRatio{*filled_volume(vessel) / *filled_volume(tested_in), true};
  }
  if (vessel.bottom && tested_in.bottom) {
    return VesselRatio{area_of(*vessel.bottom) / area_of(*tested_in.bottom), false};
  }
  const bool same = vessel.name == tested_in.name && !vessel.volume && !vessel.bottom &&
                    !tested_in.volume && !tested_in.bottom;
  return same ? std::optional(VesselRatio{1, true}) : std::nullopt;
}

/// By what the recipe makes, where both are capacities.
inline std::optional<Rational> capacity_by_volume(const Recipe& recipe,
                                                  const RecipeVessel& vessel) {
  const auto whole = filling_volume(recipe);
  if (!whole || !vessel.volume) return std::nullopt;
  return *filled_volume(vessel) / *whole * tested_content(recipe);
}

/// Of the vessel that the recipe was tested in.
inline Rational tested_capacity(const Recipe& recipe, const RecipeVessel& tested_in) {
  if (tested_in.holds) return *tested_in.holds;
  return capacity_by_volume(recipe, tested_in).value_or(tested_content(recipe));
}

/// Pieces that are `heavier` take up as much more room, and of a bottom by the power of two thirds.
/// A vessel that is no smaller than the tested one takes one piece at least.
inline Rational whole_pieces_in(const Rational& tested, const VesselRatio& ratio,
                                const Rational& heavier) {
  const Rational takes = ratio.by_volume ? heavier : two_thirds_power(heavier);
  const Rational pieces = down_to(tested * ratio.larger / takes, 1);
  return pieces < 1 && ratio.larger >= 1 ? Rational(1) : pieces;
}

inline Rational capacity_by_size(const Recipe& recipe, const RecipeVessel& vessel,
                                 const Rational& heavier) {
  if (const auto known = capacity_by_volume(recipe, vessel)) return *known;
  const auto ratio = recipe.vessel ? vessel_ratio(vessel, *recipe.vessel) : std::nullopt;
  if (!ratio) {
    throw Failure(problems::vessel_size_unknown(vessel.name, recipe.name, content_word(recipe)));
  }
  const Rational tested = tested_capacity(recipe, *recipe.vessel);
  return recipe.tested ? whole_pieces_in(tested, *ratio, heavier)
                       : Rational(tested * ratio->larger);
}

}  // namespace detail

/// What of a vessel decides how much goes into it.
enum class CountedBy { volume, bottom };

/// Nothing where its size does not decide: the cook says what one holds, or it is the one that held
/// the tested batch.
inline std::optional<CountedBy> counted_by(const Recipe& recipe, const RecipeVessel& vessel) {
  if (vessel.holds) return std::nullopt;
  if (vessel.volume && filling_volume(recipe)) return CountedBy::volume;
  if (!recipe.vessel || recipe.vessel->name == vessel.name) return std::nullopt;
  const auto ratio = detail::vessel_ratio(vessel, *recipe.vessel);
  if (!ratio) return std::nullopt;
  return ratio->by_volume ? CountedBy::volume : CountedBy::bottom;
}

/// The most that goes into one vessel, counted as `tested_content` is: what the cook says it holds;
/// else by the capacity that the recipe makes; else as much more than the vessel it was tested in
/// as it is larger, by volume, or by the bottom for a tray. Of pieces as many whole ones, each
/// `heavier` than the tested ones. Throws Failure where no size is known to go by, and where not
/// one piece goes in.
inline Rational vessel_capacity(const Recipe& recipe, const RecipeVessel& vessel,
                                const Rational& heavier = 1) {
  const Rational out =
      vessel.holds ? *vessel.holds : detail::capacity_by_size(recipe, vessel, heavier);
  if (recipe.tested && out < 1) {
    throw Failure(problems::vessel_below_a_piece(vessel.name, recipe.tested->piece));
  }
  return out;
}

}  // namespace platewright
