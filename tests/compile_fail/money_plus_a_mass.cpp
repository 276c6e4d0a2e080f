// SPDX-License-Identifier: MIT
// says: MoneyDimension
// says: MassDimension
// says: delete
// never says: boost::units
// short
// means: A sum of money and a weight are added.
// do: Multiply the weight by a price per weight; the product is `Money`.
#include "platewright/quantity/quantity.hpp"

using namespace platewright;

Money cost(const Money& hire, const Mass& lamb, [[maybe_unused]] const PricePerMass& price) {
#ifdef BAD_LINE
  return hire + lamb;
#else
  return hire + lamb * price;
#endif
}
