// SPDX-License-Identifier: MIT
#pragma once
// Kitchen measures as a card prints them.

#include <string>

#include "platewright/kitchen/measured_parts.hpp"

namespace platewright {

/// `2 1/4 tsp`, `1.25 L`.
inline std::string kitchen_part_text(const KitchenPart& part) {
  const Rational& number = part.amount.number;
  return (part.written == PartNumber::decimal ? as_exact(number) : as_mixed(number)) + " " +
         part.amount.unit.symbol_for(number);
}

/// The terms alone: `1/2 cup + 3 tbsp`; weights and lengths as they are spoken: `4 lb 5 1/2 oz`.
inline std::string kitchen_parts_text(const KitchenMeasure& measure) {
  std::string out;
  for (const KitchenPart& part : measure.parts) {
    const bool poured = part.amount.dimension() == UnitDimension::volume;
    if (!out.empty()) out += poured ? " + " : " ";
    out += kitchen_part_text(part);
  }
  return out;
}

/// The terms and, where it is not 0 to a tenth of a per cent (half up), the error: `2 1/4 tsp
/// (-1.2 %)`.
inline std::string kitchen_measure_text(const KitchenMeasure& measure) {
  const Rational error = half_up(measure.error() * 100, fraction(1, 10));
  if (error == 0) return kitchen_parts_text(measure);
  return kitchen_parts_text(measure) + (error > 0 ? " (+" : " (") + as_exact(error) + " %)";
}

}  // namespace platewright
