// SPDX-License-Identifier: MIT
// says: Rational
// says: Write_fraction_or_read_number_or_exact_value
// never says: boost::
// short
// means: An exact number is given the value of a floating-point one, which is hardly ever the
// means: decimal that was written.
// do: Write `fraction(1, 2)` or `read_number("0.5")`; or `exact_value(0.5)` for what the double
// do: holds.
#include "platewright/number/rational.hpp"

using namespace platewright;

void halve(Rational& share) {
#ifdef BAD_LINE
  share = 0.5;
#else
  share = fraction(1, 2);
#endif
}
