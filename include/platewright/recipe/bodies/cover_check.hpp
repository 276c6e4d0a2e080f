// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/recipe/cover_check.hpp.

#include <algorithm>
#include <vector>

#include "platewright/recipe/cover_check.hpp"

namespace platewright {

namespace detail {

/// Nothing where it is not a capacity and no figure of the ingredient makes it one.
PLATEWRIGHT_BODY std::optional<Volume> volume_of(const ScaledLine& line) {
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
PLATEWRIGHT_BODY Volume covering_liquid(const ScaledRecipe& scaled) {
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
PLATEWRIGHT_BODY std::optional<Volume> meat_in(const ScaledRecipe& scaled, const FilledAlike& part,
                                               const RecipeBook& book) {
  const std::optional<Volume> piece = piece_volume(*scaled.recipe, book);
  if (!piece || !scaled.plan.pieces || !scaled.plan.piece_weight) return std::nullopt;
  return *piece * heavier_pieces(*scaled.recipe, scaled.plan) * part.content;
}

PLATEWRIGHT_BODY Rational cover_share(const ScaledRecipe& scaled, const FilledAlike& part,
                                      const RecipeBook& book) {
  const ScalePlan& plan = scaled.plan;
  if (plan.cover_by_factor) return part.content / plan.vessels->content;
  const Volume piece = *piece_volume(*scaled.recipe, book) * heavier_pieces(*scaled.recipe, plan);
  return room_around(*plan.vessel, piece * part.content) /
         room_in_all(*plan.vessel, *plan.vessels, piece);
}

}  // namespace detail

PLATEWRIGHT_BODY std::optional<Overflow> overflow_of(const ScaledRecipe& scaled,
                                                     const RecipeBook& book) {
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
