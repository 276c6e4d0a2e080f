#pragma once
// Steps to round to that grow with the amount.

#include <vector>

#include "platewright/number/round.hpp"

namespace platewright {

/// From this size on, to this step; both in the canonical unit (g or mL).
struct KitchenStep {
  Rational from;
  Rational step;

  friend bool operator==(const KitchenStep&, const KitchenStep&) = default;
};

/// A rounding table, the smallest size first. An empty one leaves every value exact.
struct KitchenSteps {
  std::vector<KitchenStep> steps;

  /// `value` at the nearest step of its size, a tie up. What is above 0 never becomes 0: it is at
  /// least one step, so that no ingredient is lost from a card.
  Rational rounded(const Rational& value) const {
    Rational step;
    for (const KitchenStep& row : steps) {
      if (row.from <= value) step = row.step;
    }
    if (step == 0) return value;
    const Rational nearest = half_up(value, step);
    return nearest == 0 && value > 0 ? step : nearest;
  }

  friend bool operator==(const KitchenSteps&, const KitchenSteps&) = default;
};

}  // namespace platewright
