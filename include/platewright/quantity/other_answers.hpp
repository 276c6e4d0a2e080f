// SPDX-License-Identifier: MIT
#pragma once
// Where the spoons and the cups of a food disagree: what the measures that were not used would
// give.

#include <vector>

#include "platewright/problem/body.hpp"
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
std::vector<OtherAnswer> other_answers(const Amount& asked, const IngredientWeights& weights,
                                       const Conversion& given);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/quantity/bodies/other_answers.hpp"
#endif
