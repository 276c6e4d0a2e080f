// SPDX-License-Identifier: MIT
#pragma once
// Steps to round to that grow with the amount.

#include <vector>

#include "platewright/number/round.hpp"

namespace platewright {

/// From this size on, to this step; both in the canonical unit (g, mL or cm).
struct KitchenStep {
  Rational from;
  Rational step;

  friend bool operator==(const KitchenStep&, const KitchenStep&) = default;
};

/// A rounding table, the smallest size first. An empty one leaves every value exact.
struct KitchenSteps {
  std::vector<KitchenStep> steps;

  /// `value` at a step of its size, the nearest (a tie up) unless another rounding is named. What
  /// is above 0 never becomes 0 unless it is rounded down: it is at least one step, so that no
  /// ingredient is lost from a card.
  Rational rounded(const Rational& value, Rounding rounding = Rounding::half_up) const {
    Rational step;
    for (const KitchenStep& row : steps) {
      if (row.from <= value) step = row.step;
    }
    if (step == 0) return value;
    const Rational near = round_to(value, step, rounding);
    return near == 0 && value > 0 && rounding != Rounding::down ? step : near;
  }

  friend bool operator==(const KitchenSteps&, const KitchenSteps&) = default;
};

}  // namespace platewright
