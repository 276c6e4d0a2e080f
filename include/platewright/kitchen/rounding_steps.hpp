// SPDX-License-Identifier: MIT
#pragma once
// Steps to round to that grow with the amount.

#include <vector>

#include "platewright/number/round.hpp"
#include "platewright/problem/body.hpp"

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
  Rational rounded(const Rational& value, Rounding rounding = Rounding::half_up) const;

  friend bool operator==(const KitchenSteps&, const KitchenSteps&) = default;
};

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/kitchen/bodies/rounding_steps.hpp"
#endif
