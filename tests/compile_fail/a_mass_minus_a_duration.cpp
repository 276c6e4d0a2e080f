// SPDX-License-Identifier: MIT
// says: MassDimension
// says: TimeDimension
// says: delete
// never says: boost::units
// short
// means: A time is taken from a weight.
// do: Look at which of the two was meant: a loss is a weight, or a weight times a share.
#include "platewright/quantity/quantity.hpp"

using namespace platewright;

Mass roasted(const Mass& raw, [[maybe_unused]] const Duration& time,
             [[maybe_unused]] const Mass& loss) {
#ifdef BAD_LINE
  return raw - time;
#else
  return raw - loss;
#endif
}
