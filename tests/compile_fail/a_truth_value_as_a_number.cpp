// SPDX-License-Identifier: MIT
// says: Rational
// says: A_truth_value_is_no_number
// never says: boost::
// short
// means: The answer of a comparison is given where a number is meant.
// do: Write the number that is meant where the answer is yes, as in `late ? 1 : 0`.
#include "platewright/number/rational.hpp"

using namespace platewright;

Rational plates_short(int plates, int guests) {
#ifdef BAD_LINE
  return Rational(plates < guests);
#else
  return Rational(plates < guests ? guests - plates : 0);
#endif
}
