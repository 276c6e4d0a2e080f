// SPDX-License-Identifier: MIT
// says: PricePerMassDimension
// says: MoneyDimension
// says: delete
// never says: boost::units
// short
// means: A price per weight and a sum of money are added: 9 a kilogram plus 20.
// do: Multiply the price by the weight that is bought; then both are `Money`.
#include "platewright/quantity/quantity.hpp"

using namespace platewright;

Money bill(const PricePerMass& price, [[maybe_unused]] const Mass& bought, const Money& delivery) {
#ifdef BAD_LINE
  return price + delivery;
#else
  return price * bought + delivery;
#endif
}
