// SPDX-License-Identifier: MIT
// says: MassDimension
// says: double
// never says: boost::units
// short
// means: A weight is read as a number without saying in which unit.
// do: Say the unit: `mass.in(units::gram)`.
#include "platewright/quantity/literals.hpp"

using namespace platewright;
using namespace platewright::literals;

Rational shown(const Mass& leg) {
#ifdef BAD_LINE
  double grams = leg;
  return Rational(static_cast<int>(grams));
#else
  return leg.in(units::gram);
#endif
}
