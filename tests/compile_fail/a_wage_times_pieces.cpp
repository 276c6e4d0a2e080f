// SPDX-License-Identifier: MIT
// says: MoneyDimension
// says: PiecesDimension
// says: PricePerTimeDimension
// never says: boost::units
// short
// means: A wage, which is money per time, is multiplied by a count, and the product is used as
// means: money.
// do: Multiply it by the time worked: a `Duration`.
#include "platewright/quantity/literals.hpp"
#include "platewright/quantity/money.hpp"

using namespace platewright;
using namespace platewright::literals;

Money labour(const PricePerTime& wage, [[maybe_unused]] const Pieces& cooks,
             [[maybe_unused]] const Duration& worked) {
#ifdef BAD_LINE
  return wage * cooks;
#else
  return wage * worked;
#endif
}
