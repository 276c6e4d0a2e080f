// SPDX-License-Identifier: MIT
// says: MassDimension
// says: ProductOf
// never says: boost::units
// short
// means: Two weights are multiplied, and the product is used as a weight.
// do: One of the two should be a share without a unit: divide two weights to get one.
#include "platewright/quantity/literals.hpp"

using namespace platewright;
using namespace platewright::literals;

Mass scaled_up(const Mass& line, const Mass& wanted, [[maybe_unused]] const Mass& tested) {
#ifdef BAD_LINE
  return line * wanted;
#else
  return line * (wanted / tested);
#endif
}
