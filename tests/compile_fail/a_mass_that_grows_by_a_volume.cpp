// SPDX-License-Identifier: MIT
// says: MassDimension
// says: VolumeDimension
// never says: boost::units
// short
// means: A capacity is added into a weight that is being summed up.
// do: Weigh it first: the capacity times that ingredient's own `Density`.
#include "platewright/quantity/literals.hpp"

using namespace platewright;
using namespace platewright::literals;

void fill(Mass& pot, const Volume& stock, [[maybe_unused]] const Density& of_stock) {
#ifdef BAD_LINE
  pot += stock;
#else
  pot += stock * of_stock;
#endif
}
