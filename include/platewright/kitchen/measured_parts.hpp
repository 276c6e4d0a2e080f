// SPDX-License-Identifier: MIT
#pragma once
// An amount as a cook measures it: a few terms, and how far they are from what was asked.

#include <vector>

#include "platewright/quantity/amount.hpp"

namespace platewright {

/// How the number of a term is written.
enum class PartNumber {
  mixed,    ///< `2 1/4`, as on spoons, cups and ounce scales
  decimal,  ///< `1.25`, as on jugs in litres and on digital scales
};

/// One term that a cook measures: `1/2 cup`, `3 tbsp`, `5 1/2 oz`.
struct KitchenPart {
  Amount amount;
  PartNumber written = PartNumber::mixed;

  friend bool operator==(const KitchenPart&, const KitchenPart&) = default;
};

/// The terms that together stand for an amount of weight, capacity or length, the largest unit
/// first. `asked` and `measured` are exact, in the canonical unit (g, mL or cm); `measured` is the
/// sum of the terms.
struct KitchenMeasure {
  std::vector<KitchenPart> parts;
  Rational asked;
  Rational measured;
  bool nearest_only =
      false;  ///< no terms lay within the tolerance; these are the nearest there are

  /// What was measured beyond what was asked, as a share of what was asked: exact, negative where
  /// too little is measured, 0 where nothing was asked.
  Rational error() const { return asked == 0 ? Rational(0) : (measured - asked) / asked; }

  friend bool operator==(const KitchenMeasure&, const KitchenMeasure&) = default;
};

}  // namespace platewright
