// SPDX-License-Identifier: MIT
// says: PricePerMassDimension
// says: PricePerVolumeDimension
// says: delete
// never says: boost::units
// short
// means: A price by weight and a price by capacity are added.
// do: Bring them to one measure: a price by weight times a `Density` is a price by capacity.
#include "platewright/quantity/literals.hpp"
#include "platewright/quantity/money.hpp"

using namespace platewright;
using namespace platewright::literals;

PricePerVolume both(const PricePerVolume& oil, const PricePerMass& herbs, const Density& of_oil) {
#ifdef BAD_LINE
  return herbs + oil;
#else
  return herbs * of_oil + oil;
#endif
}
