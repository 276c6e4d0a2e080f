// SPDX-License-Identifier: MIT
#pragma once
// Trials of one cut that were weighed at two or more stages, kept as the book's own yield.

#include <string>
#include <vector>

#include "platewright/problem/body.hpp"
#include "platewright/problem/catalogue/worksheets.hpp"
#include "platewright/worksheet/trials.hpp"
#include "platewright/yield/ladder.hpp"

namespace platewright {

/// Which of the two averages the yield is.
enum class TrialAverage { mean_of_ratios, ratio_of_totals };

/// What was weighed, as it was written down.
struct KeptTests {
  /// The name that the yield gets.
  std::string name;
  std::vector<Stage> stages;
  /// One weight for each stage, a piece a row.
  std::vector<std::vector<Mass>> weighed;
  std::string method;
  std::string source;
  TrialAverage average = TrialAverage::mean_of_ratios;
  /// True for meat that may weigh more out of the oven than before: brined, or braised in liquid.
  bool water_taken_up = false;
};

/// The trials of one step.
struct KeptRung {
  TrialsResult trials;
  /// Ready for a ladder, with its number of trials, deviation and range.
  Rung rung;
};

struct KeptResult {
  std::string name;
  TrialAverage average = TrialAverage::mean_of_ratios;
  std::vector<KeptRung> rungs;
  /// The step after step that a book multiplies; the mean of each step's ratios, so multiplied, is
  /// not the mean of the ratios over all steps.
  Ladder ladder;
  /// From the first stage to the last, each trial as one step.
  TrialsResult overall;
};

/// Works out every step. Throws Failure for fewer than two stages or stages out of order, no
/// trials, a row with another number of weights than there are stages, and a weight of 0 or less,
/// and for a piece that weighs more at a later stage than at an earlier one.
KeptResult work_out(const KeptTests& tests);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/worksheet/bodies/kept_tests.hpp"
#endif
