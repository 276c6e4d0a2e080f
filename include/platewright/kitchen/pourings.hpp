// SPDX-License-Identifier: MIT
#pragma once
// How much work a kitchen measure is: what a cook fills, and how often.

#include <tuple>

#include "platewright/kitchen/measured_parts.hpp"
#include "platewright/number/round.hpp"
#include "platewright/problem/body.hpp"

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
Pourings pourings_of(const Rational& number, PartNumber written);

/// Of all terms of a measure.
Pourings pourings_of(const KitchenMeasure& measure);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/kitchen/bodies/pourings.hpp"
#endif
