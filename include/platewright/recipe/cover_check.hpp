// SPDX-License-Identifier: MIT
#pragma once
// Whether what goes into the fullest vessel fits it.

#include <algorithm>
#include <optional>
#include <vector>

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

/// Nothing where it is not a capacity and no figure of the ingredient makes it one.
inline std::optional<Volume> volume_of(const ScaledLine& line) {
  const auto amount = amount_to_buy(line.amount);
  if (!amount) return std::nullopt;
  if (amount->dimension() == UnitDimension::volume) return to_volume(*amount);
  if (line.ingredient == nullptr || amount->dimension() != UnitDimension::mass) return std::nullopt;
  for (const MeasureWeight& row : line.ingredient->weights.rows) {
    if (row.measure.dimension() != UnitDimension::volume) continue;
    return to_volume(row.measure) * (to_mass(*amount) / row.weighs);
  }
  return std::nullopt;
}

/// The lines that cover, together. One of less than a tenth of the largest is what is dissolved or
/// steeped in it, and makes it no more.
inline Volume covering_liquid(const ScaledRecipe& scaled) {
  std::vector<Volume> volumes;
  Volume largest;
  for (const ScaledLine& line : scaled.lines) {
    if (line.line->scale != ScalingRule::by_cover) continue;
    if (const auto volume = volume_of(line)) volumes.push_back(*volume);
    if (!volumes.empty()) largest = std::max(largest, volumes.back());
  }
  Volume out;
  for (const Volume& volume : volumes) {
    if (volume * 10 >= largest) out += volume;
  }
  return out;
}

/// The meat in one vessel; nothing where its volume is not known.
inline std::optional<Volume> meat_in(const ScaledRecipe& scaled, const FilledAlike& part,
                                     const RecipeBook& book) {
  const std::optional<Volume> piece = piece_volume(*scaled.recipe, book);
  if (!piece || !scaled.plan.pieces || !scaled.plan.piece_weight) return std::nullopt;
  return *piece * heavier_pieces(*scaled.recipe, scaled.plan) * part.content;
}

/// The share of what covers that goes into one of `part`: by the room left in it, or else as the
/// content.
inline Rational cover_share(const ScaledRecipe& scaled, const FilledAlike& part,
                            const RecipeBook& book) {
  const ScalePlan& plan = scaled.plan;
  if (plan.cover_by_factor) return part.content / plan.vessels->content;
  const Volume piece = *piece_volume(*scaled.recipe, book) * heavier_pieces(*scaled.recipe, plan);
  return room_around(*plan.vessel, piece * part.content) /
         room_in_all(*plan.vessel, *plan.vessels, piece);
}

}  // namespace detail

/// What is too much in the fullest vessel of the plan: of what the recipe makes, or of the lines
/// that are scaled by cover beside the meat. Nothing where it fits, or where no volume of the
/// vessel is known.
inline std::optional<Overflow> overflow_of(const ScaledRecipe& scaled, const RecipeBook& book) {
  const ScalePlan& plan = scaled.plan;
  if (!plan.vessel || !plan.vessel->volume || !plan.vessels) return std::nullopt;
  const FilledAlike& fullest = plan.vessels->fullest();
  const Volume holds = *plan.vessel->volume;
  if (const auto whole = filling_volume(*scaled.recipe)) {
    const Volume made = *whole * (fullest.content / tested_content(*scaled.recipe));
    if (made > holds) return Overflow{made, holds, false, false};
  }
  const auto meat = detail::meat_in(scaled, fullest, book);
  const Volume liquid =
      detail::covering_liquid(scaled) * detail::cover_share(scaled, fullest, book);
  // Meat may stand out of a vessel that nothing has to cover it in.
  const Volume room = std::max(Volume(), holds - meat.value_or(Volume()));
  if (liquid <= room) return std::nullopt;
  return Overflow{liquid, room, meat.has_value(), true};
}

}  // namespace platewright
