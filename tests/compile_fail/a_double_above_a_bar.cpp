// SPDX-License-Identifier: MIT
// says: Rational
// says: Write_fraction_or_read_number_or_exact_value
// never says: boost::
// short
// means: The number above the bar of a fraction is a floating-point one; a fraction is of whole
// means: numbers.
// do: Write `fraction(1, 4)`.
#include "platewright/number/rational.hpp"

using namespace platewright;

Rational quarter() {
#ifdef BAD_LINE
  return Rational(0.5, 2);
#else
  return fraction(1, 4);
#endif
}
