// SPDX-License-Identifier: MIT
#pragma once
// Several trials of one cut, and the yield they give.

#include <cstdint>
#include <optional>
#include <vector>

#include "platewright/number/square_root.hpp"
#include "platewright/problem/body.hpp"
#include "platewright/quantity/positive.hpp"
#include "platewright/worksheet/detail/parts.hpp"
#include "platewright/yield/rung.hpp"

namespace platewright {

/// The weight before a step and after it.
struct Trial {
  Mass in;
  Mass out;
};

/// Two averages that are not the same: a heavy roast counts as much as a light one in the first,
/// and by its weight in the second.
struct TrialsResult {
  std::int64_t trials = 0;
  /// The mean of out / in over the trials. The standard deviation belongs to this one.
  Rational mean_of_ratios;
  /// All that came out over all that went in: what a whole delivery yields.
  Rational ratio_of_totals;
  Rational low;
  Rational high;
  /// Of one trial (n - 1 below the line); none for a single trial. The root is taken to a relative
  /// error below 1e-20, everything else is exact.
  std::optional<Rational> standard_deviation;

  /// What a rung keeps of it.
  Spread spread() const { return {trials, standard_deviation, low, high}; }
};

/// Throws Failure for no trials and for a weight of 0 or less.
TrialsResult work_out(const std::vector<Trial>& trials);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/worksheet/bodies/trials.hpp"
#endif
