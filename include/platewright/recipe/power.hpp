// SPDX-License-Identifier: MIT
#pragma once
// The two-thirds power, by which surface follows weight.

#include "platewright/number/rational.hpp"

namespace platewright {

/// `ratio`^(2/3): pieces of one shape have surfaces in this proportion when their weights are in
/// proportion `ratio` (a scaling law of geometry: length ~ weight^(1/3), surface ~ length^2). Exact
/// where the cube root is rational (1, 8, 27/64); else worked out by whole-number Newton steps to a
/// relative error below 10^-15 and kept as that fraction. `ratio` must be above 0.
inline Rational two_thirds_power(const Rational& ratio) {
  const auto cube_root = [](const Integer& value) {
    // The largest whole number whose cube is not above `value`.
    Integer guess = Integer(1) << (msb(value) / 3 + 1);
    while (true) {
      const Integer next = (2 * guess + value / (guess * guess)) / 3;
      if (next >= guess) return guess;
      guess = next;
    }
  };
  const Integer top = numerator_of(ratio);
  const Integer bottom = denominator_of(ratio);
  const Integer top_root = cube_root(top);
  const Integer bottom_root = cube_root(bottom);
  if (top_root * top_root * top_root == top && bottom_root * bottom_root * bottom_root == bottom) {
    return Rational(top_root * top_root, bottom_root * bottom_root);
  }
  // ratio^2 = x / bottom^3 with x = top^2 * bottom, so that only one root is taken, of x scaled up
  // far enough for 18 good digits.
  const Integer scale = pow(Integer(10), 18);
  const Integer root = cube_root(top * top * bottom * scale * scale * scale);
  return Rational(root, bottom * scale);
}

}  // namespace platewright
