// SPDX-License-Identifier: MIT
// says: MassDimension
// says: VolumeDimension
// says: delete
// never says: boost::units
// short
// means: An ounce is a weight and a fluid ounce a capacity; 1 lb and 1 fl oz are not of one kind,
// means: whatever their names say.
// do: Weigh both, or measure both; from one to the other goes only through that ingredient's own
// do: `Density`.
#include "platewright/quantity/literals.hpp"

using namespace platewright;
using namespace platewright::literals;

Mass dough() {
#ifdef BAD_LINE
  return 1_lb + 1_fl_oz;
#else
  return 1_lb + 1_oz;
#endif
}
