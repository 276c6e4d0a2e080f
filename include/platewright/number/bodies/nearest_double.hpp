// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/number/nearest_double.hpp.

#include <cmath>
#include <cstdint>

#include "platewright/number/nearest_double.hpp"

namespace platewright {

PLATEWRIGHT_BODY Rational exact_value(double number) {
  if (!std::isfinite(number)) throw Failure(problems::number_not_finite());
  int exponent = 0;
  const double share = std::frexp(number, &exponent);  // 0.5 to 1, times 2^exponent
  const Integer digits = static_cast<std::int64_t>(std::ldexp(share, 53));
  exponent -= 53;
  const Integer power = Integer(1) << static_cast<unsigned>(std::abs(exponent));
  return exponent < 0 ? Rational(digits, power) : Rational(digits * power);
}

}  // namespace platewright
