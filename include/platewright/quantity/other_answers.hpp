// SPDX-License-Identifier: MIT
#pragma once
// Where the spoons and the cups of a food disagree: what the measures that were not used would
// give.

#include <vector>

#include "platewright/quantity/ingredient_weights.hpp"

namespace platewright {

/// What a conversion would have given through another measure of the same food.
struct OtherAnswer {
  const MeasureWeight* row = nullptr;  ///< of the `IngredientWeights` that was passed
  Amount amount;
  Rational difference;  ///< from the answer that was given, as a share of it
};

/// One for each measure of the food whose weight leads to another answer; none where no measure was
/// gone through, or where all of them agree. `given` must be what `convert` gave for the same
/// arguments.
inline std::vector<OtherAnswer> other_answers(const Amount& asked, const IngredientWeights& weights,
                                              const Conversion& given) {
  std::vector<OtherAnswer> out;
  const Amount& answer = given.amount;
  const bool from_measure = asked.dimension() == UnitDimension::volume;
  for (const MeasureWeight* used : given.through) {
    if (used->measure.dimension() != UnitDimension::volume || answer.number == 0) continue;
    const Rational density = used->weighs.in(units::gram) / used->measure.canonical();
    for (const MeasureWeight& row : weights.rows) {
      if (row.measure.dimension() != UnitDimension::volume) continue;
      const Rational other = row.weighs.in(units::gram) / row.measure.canonical();
      if (other == density) continue;
      const Rational factor = from_measure ? Rational(other / density) : Rational(density / other);
      out.push_back({&row, scaled(answer, factor), factor - 1});
    }
  }
  return out;
}

}  // namespace platewright
