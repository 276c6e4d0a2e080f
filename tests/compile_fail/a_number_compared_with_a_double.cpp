// SPDX-License-Identifier: MIT
// says: Rational
// says: Write_fraction_or_read_number_or_exact_value
// never says: boost::
// short
// means: An exact number is compared with a floating-point one. A tenth is not equal to 0.1, which
// means: lies a little above it.
// do: Compare with a fraction, `share == fraction(1, 10)`.
#include "platewright/number/rational.hpp"

using namespace platewright;

bool is_a_tenth(const Rational& share) {
#ifdef BAD_LINE
  return share == 0.1;
#else
  return share == fraction(1, 10);
#endif
}
