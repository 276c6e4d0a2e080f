// SPDX-License-Identifier: MIT
// says: MassDimension
// says: VolumeDimension
// never says: boost::units
// short
// means: A weight divided by a density is a capacity, and is used as a weight. A weight times the
// means: density is neither.
// do: Divide a weight by a density to get a capacity; multiply a capacity by it to get a weight.
#include "platewright/quantity/literals.hpp"

using namespace platewright;
using namespace platewright::literals;

Mass weighed(const Volume& oil, const Density& of_oil);

Mass oil(const Mass& bought, const Density& of_oil) {
#ifdef BAD_LINE
  return bought / of_oil;
#else
  return weighed(bought / of_oil, of_oil);
#endif
}
