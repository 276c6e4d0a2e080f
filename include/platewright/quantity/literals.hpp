// SPDX-License-Identifier: MIT
#pragma once
// Quantities as they are spoken: `2.5_lb`, `1_fl_oz`, `3_each`. The digits are read exactly as they
// stand in the source, not through a floating-point number.

#include "platewright/number/read.hpp"
#include "platewright/problem/body.hpp"
#include "platewright/quantity/units.hpp"

namespace platewright::literals {

namespace detail {
/// The digits of a literal, exactly; a digit separator counts for nothing. Throws Failure for a
/// literal that is not plain decimal (0x10, 1e3) and for more than 18 digits.
Rational digits_of(const char* literal);

template <class Dimension>
Quantity<Dimension> spoken(const char* literal, const NamedUnit<Dimension>& unit) {
  return Quantity<Dimension>::of(digits_of(literal), unit);
}
}  // namespace detail

// Weight.
inline Mass operator""_g(const char* n) {
  return detail::spoken(n, units::gram);
}
inline Mass operator""_kg(const char* n) {
  return detail::spoken(n, units::kilogram);
}
inline Mass operator""_oz(const char* n) {
  return detail::spoken(n, units::ounce);
}
inline Mass operator""_lb(const char* n) {
  return detail::spoken(n, units::pound);
}

// Capacity, US customary where the measuring systems differ.
inline Volume operator""_mL(const char* n) {
  return detail::spoken(n, units::millilitre);
}
inline Volume operator""_L(const char* n) {
  return detail::spoken(n, units::litre);
}
inline Volume operator""_tsp(const char* n) {
  return detail::spoken(n, units::us_teaspoon);
}
inline Volume operator""_tbsp(const char* n) {
  return detail::spoken(n, units::us_tablespoon);
}
inline Volume operator""_fl_oz(const char* n) {
  return detail::spoken(n, units::us_fluid_ounce);
}
inline Volume operator""_cup(const char* n) {
  return detail::spoken(n, units::us_cup);
}
inline Volume operator""_pt(const char* n) {
  return detail::spoken(n, units::us_pint);
}
inline Volume operator""_qt(const char* n) {
  return detail::spoken(n, units::us_quart);
}
inline Volume operator""_gal(const char* n) {
  return detail::spoken(n, units::us_gallon);
}

// Pieces, length, time.
inline Pieces operator""_each(const char* n) {
  return detail::spoken(n, units::each);
}
inline Length operator""_cm(const char* n) {
  return detail::spoken(n, units::centimetre);
}
inline Length operator""_in(const char* n) {
  return detail::spoken(n, units::inch);
}
inline Duration operator""_min(const char* n) {
  return detail::spoken(n, units::minute);
}
inline Duration operator""_h(const char* n) {
  return detail::spoken(n, units::hour);
}

}  // namespace platewright::literals

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/quantity/bodies/literals.hpp"
#endif
