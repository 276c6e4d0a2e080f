// SPDX-License-Identifier: MIT
// says: MassDimension
// says: double
// says: delete
// never says: boost::units
// short
// means: An exact quantity is multiplied or divided by a floating-point number, which would round
// means: it unseen.
// do: Multiply by an exact fraction, or make the quantity approximate by name first:
// do: `approximately(mass)`.
#include "platewright/quantity/literals.hpp"

using namespace platewright;
using namespace platewright::literals;

Mass cooked(const Mass& raw) {
#ifdef BAD_LINE
  return raw * 0.72;
#else
  return raw * fraction(72, 100);
#endif
}
