// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/kitchen/kitchen.hpp.

#include "platewright/kitchen/kitchen.hpp"

namespace platewright {

PLATEWRIGHT_BODY Kitchen usual_kitchen(MeasuringSystem system, const UnitTable& table) {
  return {system, kitchen_of(system, table), scale_of(system, table), kitchen_tolerance(),
          {},     tape_of(system, table)};
}

PLATEWRIGHT_BODY KitchenMeasure measured_in(const Volume& volume, const Kitchen& kitchen) {
  if (kitchen.rounding.measures) return measure_out(volume, *kitchen.rounding.measures);
  return kitchen_measure(volume, kitchen.measures, kitchen.tolerance);
}

PLATEWRIGHT_BODY KitchenMeasure cut_in(const Length& length, const Kitchen& kitchen) {
  const bool exact = kitchen.rounding.policy == KitchenPolicy::exact;
  return cut_off(length, exact ? KitchenRule{{}, kitchen.tape.chain} : kitchen.tape);
}

}  // namespace platewright
