// SPDX-License-Identifier: MIT
// says: Rational
// says: Write_fraction_or_read_number_or_exact_value
// never says: boost::
// short
// means: An exact number is multiplied by a floating-point one; what comes out would be exact in
// means: name only.
// do: Multiply by a fraction, `share * fraction(3, 4)`; or go over to doubles by name,
// do: `nearest_double(share) * 0.75`.
#include "platewright/number/rational.hpp"

using namespace platewright;

Rational part(const Rational& share) {
#ifdef BAD_LINE
  return share * 0.75;
#else
  return share * fraction(3, 4);
#endif
}
