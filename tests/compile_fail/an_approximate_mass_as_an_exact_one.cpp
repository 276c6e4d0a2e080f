// SPDX-License-Identifier: MIT
// says: MassDimension
// says: Approximate
// never says: boost::units
// short
// means: A weight in floating-point numbers is used where an exact one is meant. Nothing turns
// means: one into the other by itself.
// do: Say which: `exactly(approximate)` keeps every binary digit, `to_step` rounds to a step.
#include "platewright/quantity/approximate.hpp"
#include "platewright/quantity/literals.hpp"

using namespace platewright;
using namespace platewright::literals;

Mass weighed(const Quantity<MassDimension, Approximate>& estimated) {
#ifdef BAD_LINE
  return estimated;
#else
  return to_step(estimated, fraction(1, 10), units::gram);
#endif
}
