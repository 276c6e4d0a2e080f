// SPDX-License-Identifier: MIT
// says: Rational
// says: Write_fraction_or_read_number_or_exact_value
// never says: boost::
// short
// means: A floating-point number is handed to a function that counts exactly. 1.1 is not eleven
// means: tenths there but a little more, which is enough to roast one leg too many.
// do: Write `fraction(11, 10)` or `read_number("1.1")`; or `exact_value(1.1)` if the last binary
// do: digit is meant.
#include "platewright/number/rational.hpp"

using namespace platewright;

Rational twice(const Rational& factor) {
  return factor * 2;
}

Rational batches() {
#ifdef BAD_LINE
  return twice(1.1);
#else
  return twice(fraction(11, 10));
#endif
}
