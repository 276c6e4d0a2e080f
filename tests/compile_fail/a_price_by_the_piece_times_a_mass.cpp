// SPDX-License-Identifier: MIT
// says: MoneyDimension
// says: MassDimension
// says: PricePerPieceDimension
// never says: boost::units
// short
// means: A price by the piece is multiplied by a weight, and the product is used as money. Eggs
// means: at 0.40 each do not cost 0.40 a gram.
// do: Divide the weight by that ingredient's own `PieceWeight` first: the quotient is a count of
// do: pieces.
#include "platewright/quantity/literals.hpp"
#include "platewright/quantity/money.hpp"

using namespace platewright;
using namespace platewright::literals;

Money eggs(const PricePerPiece& price, const Mass& needed,
           [[maybe_unused]] const PieceWeight& egg) {
#ifdef BAD_LINE
  return price * needed;
#else
  return price * (needed / egg);
#endif
}
