// SPDX-License-Identifier: MIT
// says: MassDimension
// says: VolumeDimension
// says: delete
// never says: boost::units
// short
// means: A weight and a capacity are added. An ounce of flour and a fluid ounce of milk are not of
// means: one kind, and no number of grams is right without knowing what is in the cup.
// do: Bring both to one dimension first: a volume times that ingredient's own `Density` is a mass.
#include "platewright/quantity/quantity.hpp"

using namespace platewright;

Mass batter(const Mass& flour, const Volume& milk, [[maybe_unused]] const Density& of_milk) {
#ifdef BAD_LINE
  return flour + milk;
#else
  return flour + milk * of_milk;
#endif
}
