// SPDX-License-Identifier: MIT
// says: VolumeDimension
// says: PiecesDimension
// says: delete
// never says: boost::units
// short
// means: A capacity is compared with a count of pieces.
// do: Bring both to one dimension: through the weight of a piece and the weight of a measure.
#include "platewright/quantity/literals.hpp"

using namespace platewright;
using namespace platewright::literals;

bool enough(const Volume& needed, const Volume& measured, const Pieces& whole) {
#ifdef BAD_LINE
  return whole >= 1_each && needed == whole;
#else
  return whole >= 1_each && needed == measured;
#endif
}
