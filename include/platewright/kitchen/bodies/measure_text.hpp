// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/kitchen/measure_text.hpp.

#include "platewright/kitchen/measure_text.hpp"

namespace platewright {

PLATEWRIGHT_BODY std::string kitchen_part_text(const KitchenPart& part) {
  const Rational& number = part.amount.number;
  return (part.written == PartNumber::decimal ? as_exact(number) : as_mixed(number)) + " " +
         part.amount.unit.symbol_for(number);
}

PLATEWRIGHT_BODY std::string kitchen_parts_text(const KitchenMeasure& measure) {
  std::string out;
  for (const KitchenPart& part : measure.parts) {
    const bool poured = part.amount.dimension() == UnitDimension::volume;
    if (!out.empty()) out += poured ? " + " : " ";
    out += kitchen_part_text(part);
  }
  return out;
}

PLATEWRIGHT_BODY std::string kitchen_measure_text(const KitchenMeasure& measure) {
  const Rational error = half_up(measure.error() * 100, fraction(1, 10));
  if (error == 0) return kitchen_parts_text(measure);
  return kitchen_parts_text(measure) + (error > 0 ? " (+" : " (") + as_exact(error) + " %)";
}

}  // namespace platewright
