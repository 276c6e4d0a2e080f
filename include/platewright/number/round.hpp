// SPDX-License-Identifier: MIT
#pragma once
// Rounding, always by name and always to a stated step. Only sheets, orders and prices round.

#include "platewright/number/rational.hpp"

namespace platewright {

/// How a value between two steps is rounded.
enum class Rounding {
  down,       ///< to the lower step (portions that can be served)
  up,         ///< to the higher step (whole pieces, whole packs, a quoted price)
  half_up,    ///< to the nearest step, a tie to the higher one: the default for what is shown
  half_even,  ///< to the nearest step, a tie to the even one
};

/// The largest whole number that is not above `value`.
inline Integer floor_of(const Rational& value) {
  const Integer top = numerator_of(value);
  const Integer bottom = denominator_of(value);
  Integer quotient = top / bottom;  // truncates towards zero
  if (top < 0 && quotient * bottom != top) --quotient;
  return quotient;
}

/// The smallest whole number that is not below `value`.
inline Integer ceiling_of(const Rational& value) {
  return -floor_of(-value);
}

/// `value` as a whole number of `step`s, by the rounding named. `step` must be above 0.
inline Integer steps_of(const Rational& value, const Rational& step, Rounding rounding) {
  const Rational steps = value / step;
  switch (rounding) {
    case Rounding::down:
      return floor_of(steps);
    case Rounding::up:
      return ceiling_of(steps);
    case Rounding::half_up:
      return floor_of(steps + fraction(1, 2));
    case Rounding::half_even: {
      const Integer below = floor_of(steps);
      const Rational rest = steps - Rational(below);
      const Rational half = fraction(1, 2);
      if (rest > half || (rest == half && below % 2 != 0)) return below + 1;
      return below;
    }
  }
  return floor_of(steps);
}

/// `value` at the nearest allowed multiple of `step`. `step` must be above 0.
inline Rational round_to(const Rational& value, const Rational& step, Rounding rounding) {
  return Rational(steps_of(value, step, rounding)) * step;
}

inline Rational down_to(const Rational& value, const Rational& step) {
  return round_to(value, step, Rounding::down);
}
inline Rational up_to(const Rational& value, const Rational& step) {
  return round_to(value, step, Rounding::up);
}
inline Rational half_up(const Rational& value, const Rational& step) {
  return round_to(value, step, Rounding::half_up);
}
inline Rational half_even(const Rational& value, const Rational& step) {
  return round_to(value, step, Rounding::half_even);
}

}  // namespace platewright
