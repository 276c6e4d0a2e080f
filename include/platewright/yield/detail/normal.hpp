// SPDX-License-Identifier: MIT
#pragma once
// The normal distribution, as far as planning needs it.

#include "platewright/number/nearest_double.hpp"
#include "platewright/number/write.hpp"
#include "platewright/problem/body.hpp"
#include "platewright/problem/catalogue/numbers.hpp"
#include "platewright/problem/failure.hpp"

namespace platewright::detail {

/// How many standard deviations above the mean a normal value stays below with this probability.
/// Found in floating point by halving an interval on the complementary error function, and made a
/// fraction once, to the nearest 1e-9. Throws Failure for a probability below 1/2 or above 0.999:
/// further out the tails of real yields are not normal.
Rational deviations_for(const Rational& probability);

}  // namespace platewright::detail

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/yield/bodies/detail/normal.hpp"
#endif
