// SPDX-License-Identifier: MIT
// says: PiecesDimension
// says: MassDimension
// says: delete
// never says: boost::units
// short
// means: A count of pieces and a weight are added, as in 3 onions plus 200 g of onions.
// do: Multiply the pieces by that ingredient's own `PieceWeight`; the product is a `Mass`.
#include "platewright/quantity/quantity.hpp"

using namespace platewright;

Mass onions(const Pieces& whole, const Mass& sliced, [[maybe_unused]] const PieceWeight& onion) {
#ifdef BAD_LINE
  return whole + sliced;
#else
  return whole * onion + sliced;
#endif
}
