// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/worksheet/kept_tests.hpp.

#include "platewright/worksheet/kept_tests.hpp"

namespace platewright {

namespace detail {

/// What is lost on the way from one stage to a later one, each loss at its own stage.
PLATEWRIGHT_BODY std::vector<Loss> losses_between(Stage from, Stage to) {
  std::vector<Loss> out;
  const auto add = [&](Stage stage, Loss loss) {
    if (from < stage && stage <= to) out.push_back(loss);
  };
  add(Stage::thawed, Loss::purge);
  add(Stage::trimmed, Loss::trim);
  add(Stage::cooked, Loss::cooking);
  // Bones leave with the carving, wherever the plates are weighed.
  if (from < Stage::carved && to >= Stage::carved) {
    out.push_back(Loss::bone);
    out.push_back(Loss::carving);
  }
  return out;
}

/// One piece that grew is a slip, also where the average of all pieces hides it.
PLATEWRIGHT_BODY void check_trial(const Trial& trial, const Rung& rung) {
  Rung own = rung;
  own.yield = trial.out / trial.in;
  check_meat_yield(own);
}

}  // namespace detail

PLATEWRIGHT_BODY KeptResult work_out(const KeptTests& tests) {
  if (tests.stages.size() < 2) throw Failure(problems::trial_stages_too_few());
  if (tests.weighed.empty()) throw Failure(problems::trials_missing());
  KeptResult out{tests.name, tests.average, {}, {}, {}};
  std::vector<Rung> rungs;
  for (std::size_t i = 0; i + 1 < tests.stages.size(); ++i) {
    std::vector<Trial> trials;
    for (const std::vector<Mass>& weights : tests.weighed) {
      if (weights.size() != tests.stages.size()) {
        throw Failure(problems::trial_weights_differ(weights.size(), tests.stages.size()));
      }
      trials.push_back({weights[i], weights[i + 1]});
    }
    KeptRung kept{work_out(trials), {}};
    kept.rung = Rung{tests.stages[i],
                     tests.stages[i + 1],
                     tests.average == TrialAverage::mean_of_ratios ? kept.trials.mean_of_ratios
                                                                   : kept.trials.ratio_of_totals,
                     detail::losses_between(tests.stages[i], tests.stages[i + 1]),
                     tests.method,
                     kept.trials.spread(),
                     {tests.source, {}},
                     true};
    const auto& holds = kept.rung.holds;
    if (tests.water_taken_up &&
        std::find(holds.begin(), holds.end(), Loss::cooking) != holds.end()) {
      kept.rung.holds.push_back(Loss::water_taken_up);
    }
    for (const Trial& trial : trials) detail::check_trial(trial, kept.rung);
    check_meat_yield(kept.rung);
    rungs.push_back(kept.rung);
    out.rungs.push_back(std::move(kept));
  }
  out.ladder = Ladder(std::move(rungs));
  std::vector<Trial> whole;
  for (const std::vector<Mass>& weights : tests.weighed) {
    whole.push_back({weights.front(), weights.back()});
  }
  out.overall = work_out(whole);
  return out;
}

}  // namespace platewright
