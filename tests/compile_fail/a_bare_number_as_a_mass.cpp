// SPDX-License-Identifier: MIT
// says: MassDimension
// says: int
// says: delete
// never says: boost::
// short
// means: A number without a unit is used as a weight. Whether it meant grams, ounces or pounds, no
// means: reader can tell.
// do: Name the unit: `Mass::of(3, units::...)`.
#include "platewright/quantity/quantity.hpp"

using namespace platewright;

constexpr NamedUnit<MassDimension> gram{{1, 1}, "g"};

Mass leg() {
#ifdef BAD_LINE
  return Mass(3400);
#else
  return Mass::of(3400, gram);
#endif
}
