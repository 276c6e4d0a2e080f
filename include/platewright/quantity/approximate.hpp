// SPDX-License-Identifier: MIT
#pragma once
// Quantities in floating-point numbers beside the exact ones. The caller says each step from one to
// the other.

#include "platewright/number/nearest_double.hpp"
#include "platewright/number/round.hpp"
#include "platewright/quantity/quantity.hpp"

namespace platewright {

/// The same quantity as a plain `double`: relative error at most 2^-53, as `nearest_double` says.
template <class Dimension>
Quantity<Dimension, Approximate> approximately(const Quantity<Dimension>& exact) {
  return Quantity<Dimension, Approximate>::of(nearest_double(exact.in(canonical_unit<Dimension>)),
                                              canonical_unit<Dimension>);
}

/// The fraction that the `double` is, to its last binary digit; errors that are in it already stay.
/// Throws Failure for what is not finite.
template <class Dimension>
Quantity<Dimension> exactly(const Quantity<Dimension, Approximate>& approximate) {
  return Quantity<Dimension>::of(exact_value(approximate.in(canonical_unit<Dimension>)),
                                 canonical_unit<Dimension>);
}

/// A `double` at the nearest `step` of `unit`, which is exact from there on: to a tenth of a gram,
/// `to_step(mass, fraction(1, 10), units::gram)`. `step` must be above 0. Throws Failure for what
/// is not finite.
template <class Dimension>
Quantity<Dimension> to_step(const Quantity<Dimension, Approximate>& approximate,
                            const Rational& step, const NamedUnit<Dimension>& unit,
                            Rounding rounding = Rounding::half_up) {
  return Quantity<Dimension>::of(round_to(exactly(approximate).in(unit), step, rounding), unit);
}

}  // namespace platewright
