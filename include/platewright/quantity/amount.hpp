// SPDX-License-Identifier: MIT
#pragma once
// A number and a unit, as cooks write them.

#include <optional>
#include <string>
#include <utility>

#include "platewright/number/write.hpp"
#include "platewright/problem/body.hpp"
#include "platewright/problem/catalogue/quantities.hpp"
#include "platewright/problem/failure.hpp"
#include "platewright/quantity/quantity.hpp"
#include "platewright/quantity/spoken_unit.hpp"
#include "platewright/quantity/units.hpp"

namespace platewright {

/// So many of a unit. There is none without a unit.
struct Amount {
  Rational number;
  Unit unit;

  Amount(Rational many, const Unit& of) : number(std::move(many)), unit(of) {}
  /// A typed quantity, exactly, in the unit that a cook would say it in: `10_oz` is 10 oz, `24_oz`
  /// is 1 1/2 lb. This is the one way from one to the other.
  template <Spoken Dimension>
  Amount(const Quantity<Dimension>& quantity)
      : number(quantity.in(canonical_unit<Dimension>)),
        unit(detail::spoken_unit<Dimension>(number)) {
    number = number / unit.size();
  }

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
bool same_measure(const Unit& left, const Unit& right);

/// The same amount in another unit of the same dimension (and, for pieces, the same kind). Throws
/// Failure where they do not mix.
Amount in_unit(const Amount& amount, const Unit& unit);

/// The sum, in the unit of `left`. Throws Failure where the two do not mix.
Amount sum(const Amount& left, const Amount& right);

inline Amount scaled(const Amount& amount, const Rational& factor) {
  return Amount{amount.number * factor, amount.unit};
}

void expect_dimension(const Amount& amount, UnitDimension wanted);

/// The amount as a typed weight. Throws Failure where it is not one.
Mass to_mass(const Amount& amount);
/// The amount as a typed capacity. Throws Failure where it is not one.
Volume to_volume(const Amount& amount);
/// The amount as a typed length. Throws Failure where it is not one.
Length to_length(const Amount& amount);
/// The amount as a typed count. Throws Failure where it is not one.
Pieces to_pieces(const Amount& amount);
/// The amount as a typed time. Throws Failure where it is not one.
Duration to_duration(const Amount& amount);

/// A typed weight as an amount in `unit`. Throws Failure where that is no unit of weight.
inline Amount to_amount(const Mass& mass, const Unit& unit) {
  return in_unit(mass, unit);
}

/// What a recipe's line may say: an amount, a range that stays a range, or "to taste".
class LineAmount {
 public:
  /// To taste.
  LineAmount() = default;
  LineAmount(const Amount& amount) : low_(amount) {}
  template <Spoken Dimension>
  LineAmount(const Quantity<Dimension>& quantity) : LineAmount(Amount(quantity)) {}

  /// From `low` to `high`. Throws Failure where the two do not mix or do not rise.
  static LineAmount range(const Amount& low, const Amount& high);

  /// The amount, or the lower end of the range; nothing where it is to taste.
  const std::optional<Amount>& low() const { return low_; }
  /// The upper end of a range.
  const std::optional<Amount>& high() const { return high_; }
  bool to_taste() const { return !low_.has_value(); }

  friend LineAmount scaled(LineAmount amount, const Rational& factor) {
    if (amount.low_) amount.low_ = scaled(*amount.low_, factor);
    if (amount.high_) amount.high_ = scaled(*amount.high_, factor);
    return amount;
  }
  friend bool operator==(const LineAmount&, const LineAmount&) = default;

 private:
  std::optional<Amount> low_;
  std::optional<Amount> high_;
};

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/quantity/bodies/amount.hpp"
#endif
