// SPDX-License-Identifier: MIT
// says: MassDimension
// says: delete
// never says: boost::units
// short
// means: A weight is compared with a number without a unit. Five hundred of what?
// do: Name the unit of the number: `500_g`.
#include "platewright/quantity/literals.hpp"

using namespace platewright;
using namespace platewright::literals;

bool is_small(const Mass& bird) {
#ifdef BAD_LINE
  return bird < 500;
#else
  return bird < 500_g;
#endif
}
