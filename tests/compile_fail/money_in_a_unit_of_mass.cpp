// SPDX-License-Identifier: MIT
// says: MassDimension
// says: MoneyDimension
// never says: boost::units
// short
// means: Money is made from, or asked for in, a unit of weight.
// do: Use the book's `units::currency_unit` for money; a price per weight is money divided by a
// do: weight.
#include "platewright/quantity/literals.hpp"
#include "platewright/quantity/money.hpp"

using namespace platewright;
using namespace platewright::literals;

Money wage() {
#ifdef BAD_LINE
  return Money::of(18, units::gram);
#else
  return Money::of(18, units::currency_unit);
#endif
}
