// SPDX-License-Identifier: MIT
#pragma once
// A number that knows its dimension, so that weight and capacity can't be mixed up.

#include <compare>
#include <type_traits>
#include <utility>

#include "platewright/number/arithmetic.hpp"
#include "platewright/quantity/dimension.hpp"

namespace platewright {

/// A unit that the compiler knows: how many canonical units of its dimension it is. The named ones
/// are generated from `units-data/units.yaml` into `platewright::units`.
template <class Dimension>
struct NamedUnit {
  Ratio size;
  const char* name;
};

/// The canonical unit of a dimension, in which a quantity is held: g, mL, cm, cm2, s, pieces.
template <class Dimension>
inline constexpr NamedUnit<Dimension> canonical_unit{{1, 1}, "canonical unit"};

template <class Dimension, class Arithmetic = Exact>
class Quantity;

namespace detail {
template <class Type>
inline constexpr bool is_quantity = false;
template <class Dimension, class Arithmetic>
inline constexpr bool is_quantity<Quantity<Dimension, Arithmetic>> = true;

// Plain constants, not concepts: a compiler explains a concept that is not met at length.

template <class Type>
inline constexpr bool is_bare_number = std::is_arithmetic_v<Type> || std::is_same_v<Type, Rational>;

/// What a quantity must not be added to: another quantity, and a bare number.
template <class Other, class Mine>
inline constexpr bool is_foreign = is_bare_number<Other> ||
                                   (is_quantity<Other> && !std::is_same_v<Other, Mine>);

template <class Left, class Right>
inline constexpr bool differs = !std::is_same_v<Left, Right>;

/// A floating-point number where exact ones are counted in.
template <class Other, class Number>
inline constexpr bool would_round =
    std::is_floating_point_v<Other> && !std::is_floating_point_v<Number>;

/// What a refused call would give: it turns into anything, so that nothing but the refusal itself
/// is complained about.
struct Refused {
  template <class Anything>
  operator Anything() const;
};

/// What a quantity is not made from: a unit of another dimension, a number that would round.
template <class Count, class Dimension, class Mine>
inline constexpr bool is_no_way_in =
    differs<Dimension, typename Mine::DimensionType> || would_round<Count, typename Mine::Number>;
}  // namespace detail

/// A quantity of one dimension, held in the dimension's canonical unit. There is no way in or out
/// without naming a unit: `Mass::of(3, units::pound)`, `mass.in(units::gram)`. Adding two different
/// dimensions does not compile. `Arithmetic` is `Exact` unless the caller asks for `Approximate`.
template <class Dimension, class Arithmetic>
class Quantity {
 public:
  using DimensionType = Dimension;
  using Number = typename Arithmetic::Number;

  /// Nothing of it.
  constexpr Quantity() = default;
  /// There is no other way in than `of`.
  template <class Other>
  requires detail::differs<Other, Quantity>
  explicit Quantity(const Other&) = delete;

  /// `count` units.
  static Quantity of(const Number& count, const NamedUnit<Dimension>& unit) {
    return canonical(count * Arithmetic::from(unit.size));
  }

  /// How many `unit`s this is.
  Number in(const NamedUnit<Dimension>& unit) const {
    return canonical_ / Arithmetic::from(unit.size);
  }

  friend Quantity operator+(const Quantity& left, const Quantity& right) {
    return canonical(left.canonical_ + right.canonical_);
  }
  friend Quantity operator-(const Quantity& left, const Quantity& right) {
    return canonical(left.canonical_ - right.canonical_);
  }
  friend Quantity operator-(const Quantity& value) { return canonical(Number(-value.canonical_)); }
  Quantity& operator+=(const Quantity& other) { return *this = *this + other; }
  Quantity& operator-=(const Quantity& other) { return *this = *this - other; }

  friend Quantity operator*(const Quantity& left, const Number& right) {
    return canonical(left.canonical_ * right);
  }
  friend Quantity operator*(const Number& left, const Quantity& right) { return right * left; }
  /// The divisor must not be 0.
  friend Quantity operator/(const Quantity& left, const Number& right) {
    return canonical(left.canonical_ / right);
  }

  friend bool operator==(const Quantity& left, const Quantity& right) {
    return left.canonical_ == right.canonical_;
  }
  friend std::weak_ordering operator<=>(const Quantity& left, const Quantity& right) {
    if (left.canonical_ < right.canonical_) return std::weak_ordering::less;
    if (right.canonical_ < left.canonical_) return std::weak_ordering::greater;
    return std::weak_ordering::equivalent;
  }

  // Nothing but the same dimension adds up or compares. Deleted here, so that the compiler's
  // message names both sides in one line.
  template <class Other>
  requires detail::is_foreign<Other, Quantity>
  friend Quantity operator+(const Quantity&, const Other&) = delete;
  template <class Other>
  requires detail::is_foreign<Other, Quantity>
  friend Quantity operator-(const Quantity&, const Other&) = delete;
  template <class Other>
  requires detail::is_foreign<Other, Quantity>
  void operator+=(const Other&) = delete;
  template <class Other>
  requires detail::is_foreign<Other, Quantity>
  void operator-=(const Other&) = delete;
  template <class Other>
  requires detail::is_foreign<Other, Quantity>
  friend bool operator==(const Quantity&, const Other&) = delete;
  template <class Other>
  requires detail::is_foreign<Other, Quantity>
  friend bool operator<(const Quantity&, const Other&) = delete;
  template <class Other>
  requires detail::is_foreign<Other, Quantity>
  friend bool operator>(const Quantity&, const Other&) = delete;
  template <class Other>
  requires detail::is_foreign<Other, Quantity>
  friend bool operator<=(const Quantity&, const Other&) = delete;
  template <class Other>
  requires detail::is_foreign<Other, Quantity>
  friend bool operator>=(const Quantity&, const Other&) = delete;

  // Nor has it a unit of another dimension, and an exact quantity takes no floating-point number:
  // 0.1 is not a tenth there.
  template <class Count, class Other>
  requires detail::is_no_way_in<Count, Other, Quantity>
  static Quantity of(const Count&, const NamedUnit<Other>&) = delete;
  template <class Other>
  requires detail::differs<Other, Dimension> detail::Refused in(const NamedUnit<Other>&)
  const = delete;
  template <class Other>
  requires detail::would_round<Other, Number>
  friend Quantity operator*(const Quantity&, Other) = delete;
  template <class Other>
  requires detail::would_round<Other, Number>
  friend Quantity operator*(Other, const Quantity&) = delete;
  template <class Other>
  requires detail::would_round<Other, Number>
  friend Quantity operator/(const Quantity&, Other) = delete;

  /// The product's dimension is worked out; a plain number comes out where nothing is left of it.
  template <class Other>
  friend auto operator*(const Quantity& left, const Quantity<Other, Arithmetic>& right) {
    return left.template multiply<Other>(right);
  }
  /// The quotient's dimension is worked out; mass / mass is a plain number. The divisor must not be
  /// 0.
  template <class Other>
  friend auto operator/(const Quantity& left, const Quantity<Other, Arithmetic>& right) {
    return left.template divide<Other>(right);
  }

 private:
  template <class, class>
  friend class Quantity;

  static Quantity canonical(Number value) {
    Quantity out;
    out.canonical_ = std::move(value);
    return out;
  }

  template <class Other>
  auto multiply(const Quantity<Other, Arithmetic>& right) const {
    using Product = ProductOf<Dimension, Other>;
    const Number value = canonical_ * right.canonical_;
    if constexpr (detail::is_bare<Product>) {
      return value;
    } else {
      return Quantity<detail::Owner<Product>, Arithmetic>::canonical(value);
    }
  }

  template <class Other>
  auto divide(const Quantity<Other, Arithmetic>& right) const {
    using Quotient = QuotientOf<Dimension, Other>;
    const Number value = canonical_ / right.canonical_;
    if constexpr (detail::is_bare<Quotient>) {
      return value;
    } else {
      return Quantity<detail::Owner<Quotient>, Arithmetic>::canonical(value);
    }
  }

  Number canonical_{};
};

using Mass = Quantity<MassDimension>;
using Volume = Quantity<VolumeDimension>;
using Length = Quantity<LengthDimension>;
using Area = Quantity<AreaDimension>;
using Duration = Quantity<TimeDimension>;
using Pieces = Quantity<PiecesDimension>;
using Money = Quantity<MoneyDimension>;
using TemperatureStep = Quantity<TemperatureStepDimension>;
using Density = Quantity<DensityDimension>;
using PieceWeight = Quantity<PieceWeightDimension>;
using PricePerMass = Quantity<PricePerMassDimension>;
using PricePerVolume = Quantity<PricePerVolumeDimension>;
using PricePerPiece = Quantity<PricePerPieceDimension>;
using PricePerTime = Quantity<PricePerTimeDimension>;

}  // namespace platewright
