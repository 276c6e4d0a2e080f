// SPDX-License-Identifier: MIT
// says: MassDimension
// says: Approximate
// says: delete
// never says: boost::units
// short
// means: An exact weight and one in floating-point numbers are added. Which of the two would the
// means: sum be?
// do: Say it: `approximately(exact)`, or `exactly(approximate)` for the fraction that the number
// do: really is.
#include "platewright/quantity/approximate.hpp"
#include "platewright/quantity/literals.hpp"

using namespace platewright;
using namespace platewright::literals;

Mass total(const Mass& weighed, const Quantity<MassDimension, Approximate>& estimated) {
#ifdef BAD_LINE
  return weighed + estimated;
#else
  return weighed + exactly(estimated);
#endif
}
