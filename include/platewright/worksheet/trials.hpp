// SPDX-License-Identifier: MIT
#pragma once
// Several trials of one cut, and the yield they give.

#include <algorithm>
#include <cstdint>
#include <optional>
#include <vector>

#include "platewright/number/square_root.hpp"
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
inline TrialsResult work_out(const std::vector<Trial>& trials) {
  if (trials.empty()) throw Failure(problems::trials_missing());
  std::vector<Rational> yields;
  Mass all_in;
  Mass all_out;
  Rational sum;
  for (const Trial& trial : trials) {
    check_positive("a weight before", trial.in);
    check_positive("a weight after", trial.out);
    yields.push_back(trial.out / trial.in);
    sum += yields.back();
    all_in += trial.in;
    all_out += trial.out;
  }
  TrialsResult result;
  result.trials = static_cast<std::int64_t>(trials.size());
  result.mean_of_ratios = sum / result.trials;
  result.ratio_of_totals = all_out / all_in;
  const auto [low, high] = std::minmax_element(yields.begin(), yields.end());
  result.low = *low;
  result.high = *high;
  if (trials.size() > 1) {
    Rational squares;
    for (const Rational& yield : yields) {
      const Rational apart = yield - result.mean_of_ratios;
      squares += apart * apart;
    }
    result.standard_deviation = square_root(squares / (result.trials - 1));
  }
  return result;
}

}  // namespace platewright
