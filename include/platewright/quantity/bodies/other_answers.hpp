// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/quantity/other_answers.hpp.

#include "platewright/quantity/other_answers.hpp"

namespace platewright {

PLATEWRIGHT_BODY std::vector<OtherAnswer> other_answers(const Amount& asked,
                                                        const IngredientWeights& weights,
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
