// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/costing/plate_table.hpp.

#include "platewright/costing/plate_table.hpp"

namespace platewright {

PLATEWRIGHT_BODY RecostedPlates recost(const PlateTable& plates, const PlatePrices& prices) {
  RecostedPlates out;
  out.costs.resize(plates.size());
  out.in_fractions = plates.recost(prices, 0, out.costs);
  return out;
}

}  // namespace platewright
