// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/recipe/vessel_capacity.hpp.

#include "platewright/recipe/vessel_capacity.hpp"

namespace platewright {

PLATEWRIGHT_BODY Rational tested_content(const Recipe& recipe) {
  if (recipe.tested) return recipe.tested->count;
  return recipe.makes.portions.value_or(1);
}

PLATEWRIGHT_BODY std::optional<Volume> filling_volume(const Recipe& recipe) {
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

PLATEWRIGHT_BODY std::optional<VesselRatio> vessel_ratio(const RecipeVessel& vessel,
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
PLATEWRIGHT_BODY std::optional<Rational> capacity_by_volume(const Recipe& recipe,
                                                            const RecipeVessel& vessel) {
  const auto whole = filling_volume(recipe);
  if (!whole || !vessel.volume) return std::nullopt;
  return *filled_volume(vessel) / *whole * tested_content(recipe);
}

/// Of the vessel that the recipe was tested in.
PLATEWRIGHT_BODY Rational tested_capacity(const Recipe& recipe, const RecipeVessel& tested_in) {
  if (tested_in.holds) return *tested_in.holds;
  return capacity_by_volume(recipe, tested_in).value_or(tested_content(recipe));
}

/// Pieces that are `heavier` take up as much more room, and of a bottom by the power of two thirds.
/// A vessel that is no smaller than the tested one takes one piece at least.
PLATEWRIGHT_BODY Rational whole_pieces_in(const Rational& tested, const VesselRatio& ratio,
                                          const Rational& heavier) {
  const Rational takes = ratio.by_volume ? heavier : two_thirds_power(heavier);
  const Rational pieces = down_to(tested * ratio.larger / takes, 1);
  return pieces < 1 && ratio.larger >= 1 ? Rational(1) : pieces;
}

PLATEWRIGHT_BODY Rational capacity_by_size(const Recipe& recipe, const RecipeVessel& vessel,
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

PLATEWRIGHT_BODY std::optional<CountedBy> counted_by(const Recipe& recipe,
                                                     const RecipeVessel& vessel) {
  if (vessel.holds) return std::nullopt;
  if (vessel.volume && filling_volume(recipe)) return CountedBy::volume;
  if (!recipe.vessel || recipe.vessel->name == vessel.name) return std::nullopt;
  const auto ratio = detail::vessel_ratio(vessel, *recipe.vessel);
  if (!ratio) return std::nullopt;
  return ratio->by_volume ? CountedBy::volume : CountedBy::bottom;
}

PLATEWRIGHT_BODY Rational vessel_capacity(const Recipe& recipe, const RecipeVessel& vessel,
                                          const Rational& heavier) {
  const Rational out =
      vessel.holds ? *vessel.holds : detail::capacity_by_size(recipe, vessel, heavier);
  if (recipe.tested && out < 1) {
    throw Failure(problems::vessel_below_a_piece(vessel.name, recipe.tested->piece));
  }
  return out;
}

}  // namespace platewright
