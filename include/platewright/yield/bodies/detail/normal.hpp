// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/yield/detail/normal.hpp.

#include <cmath>

#include "platewright/yield/detail/normal.hpp"

namespace platewright::detail {

PLATEWRIGHT_BODY Rational deviations_for(const Rational& probability) {
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
