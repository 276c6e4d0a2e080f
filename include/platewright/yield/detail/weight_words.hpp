#pragma once
// A weight inside the wording of a problem.

#include <string>

#include "platewright/number/write.hpp"
#include "platewright/quantity/quantity.hpp"
#include "platewright/quantity/units.hpp"

namespace platewright::detail {

/// The exact weight in both systems, as the problem does not know which one its reader weighs in:
/// `226.796185 g (8 oz)`.
inline std::string weight_words(const Mass& mass) {
  return as_exact(mass.in(units::gram)) + " g (" + as_exact(mass.in(units::ounce)) + " oz)";
}

}  // namespace platewright::detail
