#pragma once
// A number and a unit, as cooks write them.

#include <optional>
#include <string>
#include <utility>

#include "platewright/number/write.hpp"
#include "platewright/problem/catalogue/quantities.hpp"
#include "platewright/problem/failure.hpp"
#include "platewright/quantity/quantity.hpp"
#include "platewright/quantity/unit.hpp"
#include "platewright/quantity/units.hpp"

namespace platewright {

/// So many of a unit of the run-time table.
struct Amount {
  Rational number;
  Unit unit;

  /// The size in the canonical unit of its dimension (g, mL, cm, cm2, s, pieces).
  Rational canonical() const { return number * unit.size(); }
  UnitDimension dimension() const { return unit.dimension(); }

  friend bool operator==(const Amount&, const Amount&) = default;
};

/// `2 1/4 cups`: the exact amount for a message.
inline std::string amount_text(const Amount& amount) {
  return as_mixed(amount.number) + " " + amount.unit.symbol_for(amount.number);
}

/// True where the two can be converted without knowing what is measured.
inline bool same_measure(const Unit& left, const Unit& right) {
  return left.dimension() == right.dimension() &&
         (left.dimension() != UnitDimension::pieces || left.kind() == right.kind());
}

/// The same amount in another unit of the same dimension (and, for pieces, the same kind). Throws
/// Failure where they do not mix.
inline Amount in_unit(const Amount& amount, const Unit& unit) {
  if (!same_measure(amount.unit, unit)) {
    throw Failure(problems::units_do_not_mix(amount_text(amount),
                                             dimension_name(amount.dimension()), unit.name(),
                                             dimension_name(unit.dimension())));
  }
  return Amount{amount.canonical() / unit.size(), unit};
}

/// The sum, in the unit of `left`. Throws Failure where the two do not mix.
inline Amount sum(const Amount& left, const Amount& right) {
  if (!same_measure(left.unit, right.unit)) {
    throw Failure(problems::units_do_not_mix(amount_text(left), dimension_name(left.dimension()),
                                             amount_text(right),
                                             dimension_name(right.dimension())));
  }
  return Amount{left.number + right.canonical() / left.unit.size(), left.unit};
}

inline Amount scaled(const Amount& amount, const Rational& factor) {
  return Amount{amount.number * factor, amount.unit};
}

inline void expect_dimension(const Amount& amount, UnitDimension wanted) {
  if (amount.dimension() != wanted) {
    throw Failure(problems::wrong_dimension(amount_text(amount), dimension_name(amount.dimension()),
                                            dimension_name(wanted)));
  }
}

/// The amount as a typed weight. Throws Failure where it is not one.
inline Mass to_mass(const Amount& amount) {
  expect_dimension(amount, UnitDimension::mass);
  return Mass::of(amount.canonical(), units::gram);
}
/// The amount as a typed capacity. Throws Failure where it is not one.
inline Volume to_volume(const Amount& amount) {
  expect_dimension(amount, UnitDimension::volume);
  return Volume::of(amount.canonical(), units::millilitre);
}
/// The amount as a typed length. Throws Failure where it is not one.
inline Length to_length(const Amount& amount) {
  expect_dimension(amount, UnitDimension::length);
  return Length::of(amount.canonical(), units::centimetre);
}
/// The amount as a typed count. Throws Failure where it is not one.
inline Pieces to_pieces(const Amount& amount) {
  expect_dimension(amount, UnitDimension::pieces);
  return Pieces::of(amount.canonical(), units::each);
}
/// The amount as a typed time. Throws Failure where it is not one.
inline Duration to_duration(const Amount& amount) {
  expect_dimension(amount, UnitDimension::time);
  return Duration::of(amount.canonical(), units::second);
}

/// A typed weight as an amount in `unit`, which must be one of weight.
inline Amount to_amount(const Mass& mass, const Unit& unit) {
  return Amount{mass.in(units::gram) / unit.size(), unit};
}

/// What a recipe's line may say: an amount, a range that stays a range, or "to taste".
struct LineAmount {
  std::optional<Amount> low;   ///< the amount; nothing where it is to taste
  std::optional<Amount> high;  ///< the upper end of a range

  bool to_taste() const { return !low.has_value(); }
  friend bool operator==(const LineAmount&, const LineAmount&) = default;
};

inline LineAmount scaled(LineAmount amount, const Rational& factor) {
  if (amount.low) amount.low = scaled(*amount.low, factor);
  if (amount.high) amount.high = scaled(*amount.high, factor);
  return amount;
}

}  // namespace platewright
