// SPDX-License-Identifier: MIT
#pragma once
// The unit in which a cook would say a typed quantity.

#include <array>
#include <cstddef>
#include <optional>
#include <string_view>

#include "platewright/quantity/built_in_units.hpp"
#include "platewright/quantity/quantity.hpp"

namespace platewright {

namespace detail {

/// Which units a dimension is spoken in, the largest first; the canonical one is among them. No
/// member for a dimension that has no run-time unit.
template <class Dimension>
struct SpokenUnits {};
template <>
struct SpokenUnits<MassDimension> {
  static constexpr std::array<std::string_view, 4> names{"kilogram", "pound", "ounce", "gram"};
};
template <>
struct SpokenUnits<VolumeDimension> {
  static constexpr std::array<std::string_view, 7> names{
      "US gallon", "litre", "US quart", "US cup", "US tablespoon", "US teaspoon", "millilitre"};
};
template <>
struct SpokenUnits<LengthDimension> {
  static constexpr std::array<std::string_view, 4> names{"metre", "foot", "inch", "centimetre"};
};
template <>
struct SpokenUnits<AreaDimension> {
  static constexpr std::array<std::string_view, 2> names{"square inch", "square centimetre"};
};
template <>
struct SpokenUnits<TimeDimension> {
  static constexpr std::array<std::string_view, 3> names{"hour", "minute", "second"};
};
template <>
struct SpokenUnits<PiecesDimension> {
  static constexpr std::array<std::string_view, 1> names{"each"};
};

/// The number of digits that the fraction is written with.
inline std::size_t digits_of_fraction(const Rational& value) {
  return numerator_of(value).str().size() + denominator_of(value).str().size();
}

/// Of the dimension's units the largest in which `canonical` is at least 1 and comes in wholes,
/// halves, quarters or eighths; else the one in which it is shortest to write.
template <class Dimension>
const Unit& spoken_unit(const Rational& canonical) {
  const Unit* shortest = nullptr;
  std::size_t least = 0;
  for (const std::string_view name : SpokenUnits<Dimension>::names) {
    const Unit& unit = built_in_unit(name);
    const Rational number = canonical / unit.size();
    if (number >= 1 && is_whole(number * 8)) return unit;
    const std::size_t digits = digits_of_fraction(number);
    if (shortest == nullptr || digits < least) {
      shortest = &unit;
      least = digits;
    }
  }
  return *shortest;
}

}  // namespace detail

/// True for a dimension that has run-time units.
template <class Dimension>
concept Spoken = requires { detail::SpokenUnits<Dimension>::names; };

}  // namespace platewright
