// SPDX-License-Identifier: MIT
// says: AreaDimension
// says: LengthDimension
// says: delete
// never says: boost::units
// short
// means: The side of a pan is added to its area.
// do: Multiply two lengths to get an area, then add areas.
#include "platewright/quantity/literals.hpp"

using namespace platewright;
using namespace platewright::literals;

Area paper(const Area& tray, const Length& edge) {
#ifdef BAD_LINE
  return tray + edge;
#else
  return tray + edge * edge;
#endif
}
