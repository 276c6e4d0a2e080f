// SPDX-License-Identifier: MIT
// says: MassDimension
// says: VolumeDimension
// never says: boost::units
// short
// means: A capacity is returned, or kept, as a weight.
// do: Multiply it by that ingredient's own `Density`.
#include "platewright/quantity/literals.hpp"

using namespace platewright;
using namespace platewright::literals;

Mass milk([[maybe_unused]] const Density& of_milk) {
#ifdef BAD_LINE
  return 2_cup;
#else
  return 2_cup * of_milk;
#endif
}
