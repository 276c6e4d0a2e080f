// SPDX-License-Identifier: MIT
// says: MassDimension
// says: double
// says: delete
// never says: boost::units
// short
// means: A floating-point number is put into an exact quantity. 0.1 is not a tenth there: it
// means: would stay 0.1000000000000000055 for good.
// do: Write the fraction, `fraction(1, 10)`, or the literal `0.1_g`, or read the text; or turn
// do: the number into its nearest step by name with `to_step`.
#include "platewright/quantity/literals.hpp"

using namespace platewright;
using namespace platewright::literals;

Mass yeast() {
#ifdef BAD_LINE
  return Mass::of(0.1, units::gram);
#else
  return Mass::of(fraction(1, 10), units::gram);
#endif
}
