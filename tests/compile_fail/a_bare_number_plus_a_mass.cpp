// SPDX-License-Identifier: MIT
// says: MassDimension
// says: delete
// never says: boost::units
// short
// means: A number without a unit is added to a weight, or taken from it.
// do: Name the unit: `Mass::of(5, units::gram)`, or the literal `5_g`.
#include "platewright/quantity/literals.hpp"

using namespace platewright;
using namespace platewright::literals;

Mass with_salt(const Mass& dough) {
#ifdef BAD_LINE
  return dough + 5;
#else
  return dough + 5_g;
#endif
}
