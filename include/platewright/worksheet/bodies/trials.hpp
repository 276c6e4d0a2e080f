// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/worksheet/trials.hpp.

#include <algorithm>

#include "platewright/worksheet/trials.hpp"

namespace platewright {

PLATEWRIGHT_BODY TrialsResult work_out(const std::vector<Trial>& trials) {
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
