// SPDX-License-Identifier: MIT
// says: MassDimension
// says: VolumeDimension
// says: delete
// never says: boost::units
// short
// means: A weight is compared with a capacity.
// do: Bring both to one dimension with that ingredient's own `Density`, then compare.
#include "platewright/quantity/quantity.hpp"

using namespace platewright;

bool is_enough(const Mass& needed, const Volume& on_hand, [[maybe_unused]] const Density& density) {
#ifdef BAD_LINE
  return needed < on_hand;
#else
  return needed < on_hand * density;
#endif
}
