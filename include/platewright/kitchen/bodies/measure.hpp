// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/kitchen/measure.hpp.

#include <cstddef>
#include <optional>

#include "platewright/kitchen/measure.hpp"

namespace platewright {

PLATEWRIGHT_BODY KitchenMeasure kitchen_measure(const Volume& volume, const KitchenSet& set,
                                                const Rational& tolerance) {
  const Rational asked = volume.in(units::millilitre);
  if (asked < 0) {
    throw Failure(problems::number_not_positive("a capacity", as_exact(asked) + " mL"));
  }
  if (tolerance < 0) {
    throw Failure(problems::share_out_of_range("a tolerance", as_exact(tolerance), "0 % or more"));
  }
  if (asked == 0) {
    const KitchenTool& smallest = set.tools().back();
    return KitchenMeasure{{{Amount{0, smallest.unit}, smallest.written}}, 0, 0, false};
  }
  detail::KitchenSearch within(set, asked);
  for (std::size_t terms = 1; terms <= within.most_terms(); ++terms) {
    within.find(terms, tolerance * asked);
    if (within.found()) return within.result(false);
  }
  detail::KitchenSearch nearest(set, asked);
  for (std::size_t terms = 1; terms <= nearest.most_terms(); ++terms) {
    nearest.find(terms, std::nullopt);
  }
  return nearest.result(true);
}

}  // namespace platewright
