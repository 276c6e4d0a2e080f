// SPDX-License-Identifier: MIT
// says: PricePerMassDimension
// says: VolumeDimension
// says: MoneyDimension
// never says: boost::units
// short
// means: A price per weight is multiplied by a volume, and the product is used as money. Oil at 6 a
// means: kilogram does not cost 6 a litre.
// do: Multiply by a weight, or make the price a `PricePerVolume`.
#include "platewright/quantity/quantity.hpp"

using namespace platewright;

Money oil_cost(const PricePerMass& price, [[maybe_unused]] const Volume& oil,
               [[maybe_unused]] const Density& of_oil) {
#ifdef BAD_LINE
  return price * oil;
#else
  return price * (oil * of_oil);
#endif
}
