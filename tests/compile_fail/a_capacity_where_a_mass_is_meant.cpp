// SPDX-License-Identifier: MIT
// says: MassDimension
// says: VolumeDimension
// never says: boost::units
// short
// means: A function that asks for a weight is given a capacity.
// do: Give it a weight: the capacity times that ingredient's own `Density`.
#include "platewright/quantity/literals.hpp"

using namespace platewright;
using namespace platewright::literals;

Mass in_the_oven(const Mass& raw);

Mass braise(const Volume& stock, [[maybe_unused]] const Density& of_stock) {
#ifdef BAD_LINE
  return in_the_oven(stock);
#else
  return in_the_oven(stock * of_stock);
#endif
}
