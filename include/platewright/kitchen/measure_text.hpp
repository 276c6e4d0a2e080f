// SPDX-License-Identifier: MIT
#pragma once
// Kitchen measures as a card prints them.

#include <string>

#include "platewright/kitchen/measured_parts.hpp"
#include "platewright/problem/body.hpp"

namespace platewright {

/// `2 1/4 tsp`, `1.25 L`.
std::string kitchen_part_text(const KitchenPart& part);

/// The terms alone: `1/2 cup + 3 tbsp`; weights and lengths as they are spoken: `4 lb 5 1/2 oz`.
std::string kitchen_parts_text(const KitchenMeasure& measure);

/// The terms and, where it is not 0 to a tenth of a per cent (half up), the error: `2 1/4 tsp
/// (-1.2 %)`.
std::string kitchen_measure_text(const KitchenMeasure& measure);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/kitchen/bodies/measure_text.hpp"
#endif
