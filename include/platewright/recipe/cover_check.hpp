#pragma once
// Whether what covers the meat fits its vessels.

#include <algorithm>
#include <optional>
#include <vector>

#include "platewright/recipe/scaled_recipe.hpp"

namespace platewright {

/// A brine or marinade that is more than its vessels hold.
struct Overflow {
  Volume liquid;
  /// What the vessels hold, less the meat where its volume is known.
  Volume room;
  bool less_the_meat = false;
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

}  // namespace detail

/// What the lines that are scaled by cover come to, where it is more than the vessels of the plan
/// hold; nothing where it fits, or where no volume of the vessel is known.
inline std::optional<Overflow> overflow_of(const ScaledRecipe& scaled, const RecipeBook& book) {
  const ScalePlan& plan = scaled.plan;
  if (!plan.vessel || !plan.vessel->volume || !plan.vessels) return std::nullopt;
  Overflow out;
  out.liquid = detail::covering_liquid(scaled);
  out.room = *plan.vessel->volume * *plan.vessels;
  const std::optional<Volume> piece = piece_volume(*scaled.recipe, book);
  out.less_the_meat = piece && plan.pieces && plan.piece_weight;
  if (out.less_the_meat) {
    const Mass tested = scaled.recipe->tested->weight;
    out.room -= *piece * (*plan.piece_weight / tested) * *plan.pieces;
  }
  if (out.liquid <= out.room) return std::nullopt;
  return out;
}

}  // namespace platewright
