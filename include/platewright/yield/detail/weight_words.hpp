#pragma once
// A weight inside the wording of a problem.

#include <string>

#include "platewright/number/write.hpp"
#include "platewright/quantity/quantity.hpp"
#include "platewright/quantity/units.hpp"

namespace platewright::detail {

/// A decimal that ends is written out; one that does not is rounded half up to two places.
inline std::string weight_number(const Rational& value) {
  return has_finite_decimal(value) ? as_exact(value) : as_short_decimal(value, 2);
}

/// The weight in both systems, as the problem does not know which one its reader weighs in:
/// `226.796185 g (8 oz)`, `50 g (1.76 oz)`.
inline std::string weight_words(const Mass& mass) {
  return weight_number(mass.in(units::gram)) + " g (" + weight_number(mass.in(units::ounce)) +
         " oz)";
}

}  // namespace platewright::detail
