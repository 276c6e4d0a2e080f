// SPDX-License-Identifier: MIT
#pragma once
// Typed quantities from text and as text, and sums of many of them.

#include <string>
#include <string_view>

#include "platewright/number/write.hpp"
#include "platewright/quantity/approximate.hpp"
#include "platewright/quantity/read_amount.hpp"

namespace platewright {

namespace detail {
/// The dimension of the run-time table that a typed one is.
template <class Dimension>
struct TableDimension;
template <>
struct TableDimension<MassDimension> {
  static constexpr UnitDimension value = UnitDimension::mass;
};
template <>
struct TableDimension<VolumeDimension> {
  static constexpr UnitDimension value = UnitDimension::volume;
};
template <>
struct TableDimension<LengthDimension> {
  static constexpr UnitDimension value = UnitDimension::length;
};
template <>
struct TableDimension<AreaDimension> {
  static constexpr UnitDimension value = UnitDimension::area;
};
template <>
struct TableDimension<TimeDimension> {
  static constexpr UnitDimension value = UnitDimension::time;
};
template <>
struct TableDimension<PiecesDimension> {
  static constexpr UnitDimension value = UnitDimension::pieces;
};
}  // namespace detail

/// A typed quantity from what a cook writes: `read<Mass>("2 lb 3 oz", table)`. `Typed` is `Mass`,
/// `Volume`, `Length`, `Area`, `Duration` or `Pieces`; bare cups and pints are those of `system`.
/// Throws Failure as `read_amount` does, and for an amount of another dimension.
template <class Typed>
Typed read(std::string_view text, const UnitTable& table,
           MeasuringSystem system = MeasuringSystem::us) {
  using Dimension = typename Typed::DimensionType;
  const Amount amount = read_amount(text, table, system);
  expect_dimension(amount, detail::TableDimension<Dimension>::value);
  return Typed::of(amount.canonical(), canonical_unit<Dimension>);
}

/// The exact quantity as cooks write numbers: `text(mass, units::pound)` is `2 3/16 pound`.
template <class Dimension>
std::string text(const Quantity<Dimension>& quantity, const NamedUnit<Dimension>& unit) {
  return as_mixed(quantity.in(unit)) + " " + unit.name;
}

/// The quantity with at most `places` decimals: `2.19 pound`. Rounds half up if no rule is named.
template <class Dimension>
std::string text(const Quantity<Dimension>& quantity, const NamedUnit<Dimension>& unit,
                 unsigned places, Rounding rounding = Rounding::half_up) {
  return as_short_decimal(quantity.in(unit), places, rounding) + " " + unit.name;
}

/// The same of an approximate quantity; decimals only, as its fraction has no meaning. Throws
/// Failure for what is not finite.
template <class Dimension>
std::string text(const Quantity<Dimension, Approximate>& quantity, const NamedUnit<Dimension>& unit,
                 unsigned places, Rounding rounding = Rounding::half_up) {
  return text(exactly(quantity), unit, places, rounding);
}

/// The sum of a range of quantities of one dimension; nothing of it for an empty range.
template <class Range>
auto sum_of(const Range& quantities) {
  typename Range::value_type total{};
  for (const auto& quantity : quantities) total += quantity;
  return total;
}

}  // namespace platewright
