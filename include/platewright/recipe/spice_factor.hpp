// SPDX-License-Identifier: MIT
#pragma once
// Published rules for herbs and spices, whose strength does not follow the size of the batch.

#include "platewright/number/rational.hpp"
#include "platewright/problem/body.hpp"
#include "platewright/recipe/scaling_rule.hpp"

namespace platewright {

/// The factor that a herb or spice follows when the recipe follows `factor`. Every published rule
/// speaks of larger batches: below the size where a rule begins, the line follows the factor.
///
/// - `spice_on_double`: `factor` 2 gives 1 1/2 (Idaho State Department of Education). It prints the
///   double alone; here each further multiple adds the same half.
/// - `herb_formula`: twice at 2, then half of the original for each further multiple (Canadian
///   Spice Association; its example is 1 tbsp of basil for 10, 6 tbsp for 100).
/// - `hot_pepper`: the same with a quarter (1 tsp for 10, 4 tsp for 100).
///
/// Any other rule gives `factor`.
Rational spice_factor(ScalingRule rule, const Rational& factor);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/recipe/bodies/spice_factor.hpp"
#endif
