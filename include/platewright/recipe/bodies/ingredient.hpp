// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/recipe/ingredient.hpp.

#include <cstddef>

#include "platewright/recipe/ingredient.hpp"

namespace platewright {

PLATEWRIGHT_BODY const IngredientWeights& weights_of(const Ingredient& ingredient,
                                                     std::string_view preparation) {
  const IngredientWeights* best = &ingredient.weights;
  if (ingredient.prepared_weights.empty() || preparation.empty()) return *best;
  std::size_t longest = 0;
  const std::string wanted = " " + folded_name(preparation) + " ";
  for (const auto& [name, weights] : ingredient.prepared_weights) {
    if (name.size() > longest && wanted.find(" " + name + " ") != std::string::npos) {
      best = &weights;
      longest = name.size();
    }
  }
  return *best;
}

PLATEWRIGHT_BODY Amount as_purchased(const Amount& used, Stage stage, const Ingredient& ingredient,
                                     const Unit& unit, std::string_view preparation) {
  if (used.dimension() == UnitDimension::pieces && same_measure(used.unit, unit)) {
    return in_unit(used, unit);
  }
  const Rational yield = yield_to(ingredient, stage);
  return scaled(convert(used, unit, weights_of(ingredient, preparation)).amount,
                Rational(1) / yield);
}

}  // namespace platewright
