// SPDX-License-Identifier: MIT
// says: VolumeDimension
// says: MassDimension
// never says: boost::
// short
// means: A weight is made from, or asked for in, a unit of another dimension, as in pounds out of
// means: fluid ounces.
// do: Use a unit of the quantity's own dimension, or convert through a `Density` first.
#include "platewright/quantity/quantity.hpp"

using namespace platewright;

[[maybe_unused]] constexpr NamedUnit<MassDimension> gram{{1, 1}, "g"};
[[maybe_unused]] constexpr NamedUnit<VolumeDimension> millilitre{{1, 1}, "mL"};

Rational shown(const Mass& mass) {
#ifdef BAD_LINE
  return mass.in(millilitre);
#else
  return mass.in(gram);
#endif
}
