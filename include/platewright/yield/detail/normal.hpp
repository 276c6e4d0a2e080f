// SPDX-License-Identifier: MIT
#pragma once
// The normal distribution, as far as planning needs it.

#include <cmath>

#include "platewright/number/nearest_double.hpp"
#include "platewright/number/write.hpp"
#include "platewright/problem/catalogue/numbers.hpp"
#include "platewright/problem/failure.hpp"

namespace platewright::detail {

/// How many standard deviations above the mean a normal value stays below with this probability.
/// Found in floating point by halving an interval on the complementary error function, and made a
/// fraction once, to the nearest 1e-9. Throws Failure for a probability below 1/2 or above 0.999:
/// further out the tails of real yields are not normal.
inline Rational deviations_for(const Rational& probability) {
  if (probability < fraction(1, 2) || probability > fraction(999, 1000)) {
    throw Failure(problems::share_out_of_range("a probability", as_exact(probability),
                                               "a probability from 50 % to 99.9 %"));
  }
  const double wanted = nearest_double(probability);
  double low = 0.0;
  double high = 4.0;
  for (int i = 0; i < 60; ++i) {
    const double middle = (low + high) / 2.0;
    const double below = 0.5 * std::erfc(-middle / std::sqrt(2.0));
    (below < wanted ? low : high) = middle;
  }
  return fraction(std::llround(low * 1e9), 1'000'000'000);
}

}  // namespace platewright::detail
