// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/recipe/power.hpp.

#include "platewright/recipe/power.hpp"

namespace platewright {

PLATEWRIGHT_BODY Rational two_thirds_power(const Rational& ratio) {
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
