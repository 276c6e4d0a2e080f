// SPDX-License-Identifier: MIT
#pragma once
// How much work a kitchen measure is: what a cook fills, and how often.

#include <tuple>

#include "platewright/kitchen/measured_parts.hpp"
#include "platewright/number/round.hpp"

namespace platewright {

/// What a cook does for a sum of terms. The fewer marks between the whole measures, the less can be
/// misread: `3 gal + 2 cups` has none, `2 1/2 gal + 2 1/2 qt` has two. A term that stands alone is
/// read as one: `1/2 pt` is no more than `10 fl oz`.
struct Pourings {
  Rational fractions;  ///< of several terms, those that end at a part of a measure: `2 1/4 tsp`
  Rational fillings;   ///< measures filled: `3 gal + 2 cups` are five, `1 1/2 qt` are two

  friend bool operator==(const Pourings&, const Pourings&) = default;
  /// Fewer fractions are less work; of as many, fewer fillings.
  friend bool operator<(const Pourings& left, const Pourings& right) {
    return std::tie(left.fractions, left.fillings) < std::tie(right.fractions, right.fillings);
  }
  Pourings& operator+=(const Pourings& other) {
    fractions += other.fractions;
    fillings += other.fillings;
    return *this;
  }
};

/// Of one term among others. What is read off a jug's scale in decimals is one filling, and no
/// fraction.
inline Pourings pourings_of(const Rational& number, PartNumber written) {
  if (written == PartNumber::decimal) return {0, 1};
  const Rational whole = down_to(number, 1);
  return whole == number ? Pourings{0, whole} : Pourings{1, whole + 1};
}

/// Of all terms of a measure.
inline Pourings pourings_of(const KitchenMeasure& measure) {
  Pourings out;
  for (const KitchenPart& part : measure.parts) {
    out += pourings_of(part.amount.number, part.written);
  }
  if (measure.parts.size() == 1) out.fractions = 0;
  return out;
}

}  // namespace platewright
