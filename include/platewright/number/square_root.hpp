// SPDX-License-Identifier: MIT
#pragma once
// The one root that yields need, for standard deviations.

#include "platewright/number/rational.hpp"

namespace platewright {

/// The square root of a value that is not below 0, rounded down to a fraction with a relative error
/// below 1e-20: sqrt(n / d) = sqrt(n x d x 10^40) / (d x 10^20), its upper root taken in whole
/// numbers. Exact for 0 and for squares of whole numbers.
inline Rational square_root(const Rational& value) {
  Integer scale = 1;
  for (int i = 0; i < 20; ++i) scale *= 10;
  const Integer bottom = denominator_of(value);
  const Integer radicand = numerator_of(value) * bottom * scale * scale;
  return Rational(Integer(boost::multiprecision::sqrt(radicand)), Integer(bottom * scale));
}

}  // namespace platewright
