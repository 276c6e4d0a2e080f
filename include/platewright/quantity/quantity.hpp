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

/// A quantity of one dimension, held in the dimension's canonical unit. There is no way in or out
/// without naming a unit: `Mass::of(3, units::pound)`, `mass.in(units::gram)`. Adding two different
/// dimensions does not compile. `Arithmetic` is `Exact` unless the caller asks for `Approximate`.
template <class Dimension, class Arithmetic = Exact>
class Quantity {
 public:
  using DimensionType = Dimension;
  using Number = typename Arithmetic::Number;

  /// Nothing of it.
  constexpr Quantity() = default;

  /// `count` units.
  static Quantity of(const Number& count, const NamedUnit<Dimension>& unit) {
    return canonical(count * Arithmetic::from(unit.size));
  }

  /// How many `unit`s this is.
  Number in(const NamedUnit<Dimension>& unit) const { return canonical_ / Arithmetic::from(unit.size); }

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

  // Two dimensions never add up. Deleted here, so that the compiler's message names both in one line.
  template <class Other>
    requires(!std::is_same_v<Dimension, Other>)
  friend Quantity operator+(const Quantity&, const Quantity<Other, Arithmetic>&) = delete;
  template <class Other>
    requires(!std::is_same_v<Dimension, Other>)
  friend Quantity operator-(const Quantity&, const Quantity<Other, Arithmetic>&) = delete;
  template <class Other>
    requires(!std::is_same_v<Dimension, Other>)
  friend bool operator==(const Quantity&, const Quantity<Other, Arithmetic>&) = delete;
  template <class Other>
    requires(!std::is_same_v<Dimension, Other>)
  friend bool operator<(const Quantity&, const Quantity<Other, Arithmetic>&) = delete;

  /// The product's dimension is worked out; a plain number comes out where nothing is left of it.
  template <class Other>
  friend auto operator*(const Quantity& left, const Quantity<Other, Arithmetic>& right) {
    return left.template multiply<Other>(right);
  }
  /// The quotient's dimension is worked out; mass / mass is a plain number. The divisor must not be 0.
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
    using Algebra = detail::times<typename Dimension::Algebra, typename Other::Algebra>;
    const Number value = canonical_ * right.canonical_;
    if constexpr (detail::is_bare<Algebra>) {
      return value;
    } else {
      return Quantity<detail::Owner<Algebra>, Arithmetic>::canonical(value);
    }
  }

  template <class Other>
  auto divide(const Quantity<Other, Arithmetic>& right) const {
    using Algebra = detail::divides<typename Dimension::Algebra, typename Other::Algebra>;
    const Number value = canonical_ / right.canonical_;
    if constexpr (detail::is_bare<Algebra>) {
      return value;
    } else {
      return Quantity<detail::Owner<Algebra>, Arithmetic>::canonical(value);
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
