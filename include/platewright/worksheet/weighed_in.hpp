// SPDX-License-Identifier: MIT
#pragma once
// Pounds and ounces, or kilograms and hundreds of grams: the weights that a sheet is worked in.

#include <string_view>

#include "platewright/quantity/quantity.hpp"
#include "platewright/quantity/units.hpp"

namespace platewright {

enum class WeighedIn { pounds, kilograms };

/// The weight that prices are for: a pound or a kilogram.
inline Mass price_weight(WeighedIn weights) {
  return weights == WeighedIn::pounds ? Mass::of(1, units::pound) : Mass::of(1, units::kilogram);
}
/// The weight that portions are priced by: an ounce or 100 g.
inline Mass small_weight(WeighedIn weights) {
  return weights == WeighedIn::pounds ? Mass::of(1, units::ounce) : Mass::of(100, units::gram);
}
/// The unit that portions are weighed in: an ounce or a gram.
inline Mass portion_weight(WeighedIn weights) {
  return weights == WeighedIn::pounds ? Mass::of(1, units::ounce) : Mass::of(1, units::gram);
}

/// `lb` or `kg`.
inline std::string_view price_weight_name(WeighedIn weights) {
  return weights == WeighedIn::pounds ? "lb" : "kg";
}
/// `oz` or `100 g`.
inline std::string_view small_weight_name(WeighedIn weights) {
  return weights == WeighedIn::pounds ? "oz" : "100 g";
}

}  // namespace platewright
