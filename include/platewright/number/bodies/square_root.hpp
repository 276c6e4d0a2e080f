// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/number/square_root.hpp.

#include "platewright/number/square_root.hpp"

namespace platewright {

PLATEWRIGHT_BODY Rational square_root(const Rational& value) {
  Integer scale = 1;
  for (int i = 0; i < 20; ++i) scale *= 10;
  const Integer bottom = denominator_of(value);
  const Integer radicand = numerator_of(value) * bottom * scale * scale;
  return Rational(Integer(boost::multiprecision::sqrt(radicand)), Integer(bottom * scale));
}

}  // namespace platewright
