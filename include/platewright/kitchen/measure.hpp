// SPDX-License-Identifier: MIT
#pragma once
// A capacity in the fewest measures that a kitchen owns.

#include "platewright/kitchen/detail/measure_search.hpp"
#include "platewright/problem/body.hpp"
#include "platewright/problem/catalogue/numbers.hpp"

namespace platewright {

/// How far a kitchen measure may be from the exact capacity where nothing else is said: 2 %. Common
/// practice, no source.
inline Rational kitchen_tolerance() {
  return fraction(2, 100);
}

/// The fewest terms of the set that lie within the tolerance (a share of the capacity, so 2/100 for
/// 2 %): `1/2 cup + 3 tbsp`. A term is what a cook reads as one: `2 1/4 tsp` is one. Of sums with
/// the same number of terms the nearest is taken; of those equally near the one with the fewest
/// marks between whole measures, then the fewest measures filled (`Pourings`), then the one in
/// larger units: 12 1/2 qt are `3 gal + 2 cups` and not `2 1/2 gal + 2 1/2 qt`. Where nothing lies
/// within the tolerance (less than the smallest spoon, a tolerance of 0) the nearest sum is given
/// and `nearest_only` is set; what is asked never becomes nothing. Throws Failure for a negative
/// capacity or tolerance.
KitchenMeasure kitchen_measure(const Volume& volume, const KitchenSet& set,
                               const Rational& tolerance = kitchen_tolerance());

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/kitchen/bodies/measure.hpp"
#endif
