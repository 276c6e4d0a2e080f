// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/worksheet/handbook.hpp.

#include <algorithm>

#include "platewright/worksheet/handbook.hpp"

namespace platewright {

PLATEWRIGHT_BODY TestedYields TestedYields::of(const std::optional<TrimTestResult>& trim,
                                               const std::optional<CookingLossResult>& cooking) {
  TestedYields out;
  if (trim) out.trimming = trim->yield;
  if (cooking) {
    out.cooking = cooking->cooked / cooking->trimmed;
    out.carving = cooking->saleable / cooking->cooked;
  }
  return out;
}

namespace detail {

struct TestedStep {
  Rational yield = 1;
  bool from_oven_ready = false;
};

/// The tested yield over the steps that a rung covers: trimming only where the rung holds what a
/// trim test takes off, as a cooking yield is that of the piece that goes into the oven.
PLATEWRIGHT_BODY std::optional<TestedStep> tested_yield_for(const Rung& rung,
                                                            const TestedYields& tested) {
  const auto holds = [&](Loss loss) {
    return std::find(rung.holds.begin(), rung.holds.end(), loss) != rung.holds.end();
  };
  const bool trims =
      rung.from < Stage::trimmed && rung.to >= Stage::trimmed &&
      (rung.to == Stage::trimmed || holds(Loss::trim) || holds(Loss::bone) || holds(Loss::skin));
  const bool cooks = rung.from < Stage::cooked && rung.to >= Stage::cooked;
  const bool carves = rung.to > Stage::cooked;
  if (cooks && !tested.cooking) return std::nullopt;
  if (carves && !tested.carving) return std::nullopt;
  // A piece bought oven-ready has no trim test; nothing was taken off it before the oven.
  if (trims && !cooks && !tested.trimming) return std::nullopt;
  TestedStep out;
  if (trims) out.yield *= tested.trimming.value_or(1);
  if (cooks) out.yield *= *tested.cooking;
  if (carves) out.yield *= *tested.carving;
  out.from_oven_ready = rung.from < Stage::trimmed && cooks && !(trims && tested.trimming);
  return out;
}

}  // namespace detail

PLATEWRIGHT_BODY std::vector<HandbookComparison> beside_handbook(const Ladder& ladder,
                                                                 const TestedYields& tested) {
  std::vector<HandbookComparison> out;
  for (const Rung& rung : ladder.rungs()) {
    const auto step = detail::tested_yield_for(rung, tested);
    if (!step) continue;
    HandbookComparison comparison{rung, step->yield, step->from_oven_ready, {}, {}, false};
    const Spread& spread = rung.spread;
    if (spread.standard_deviation && *spread.standard_deviation > 0) {
      comparison.deviations = (step->yield - rung.yield) / *spread.standard_deviation;
    }
    if (spread.low && spread.high) {
      comparison.within_range = step->yield >= *spread.low && step->yield <= *spread.high;
    }
    out.push_back(std::move(comparison));
  }
  return out;
}

}  // namespace platewright
