// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/heat/lethality.hpp.

#include "platewright/heat/lethality.hpp"

namespace platewright {

PLATEWRIGHT_BODY std::optional<StepHeld> LethalityCheck::met() const {
  std::optional<StepHeld> out;
  for (const StepHeld& held : steps) {
    if (held.met && (!out || *held.met < *out->met)) out = held;
  }
  return out;
}

PLATEWRIGHT_BODY std::optional<StepHeld> LethalityCheck::nearest() const {
  std::optional<StepHeld> out;
  for (const StepHeld& held : steps) {
    if (held.met) return std::nullopt;
    if (held.reached && (!out || held.missing() < out->missing())) out = held;
  }
  return out;
}

namespace detail {

PLATEWRIGHT_BODY StepHeld step_held(const LethalityStep& step, const CoreCurve& curve) {
  StepHeld out{step, false, {}, {}};
  std::optional<Duration> since;
  for (const CoreReading& reading : curve.readings()) {
    if (reading.core < step.at) {
      since.reset();
      continue;
    }
    out.reached = true;
    if (!since) since = reading.at;
    const Duration stretch = reading.at - *since;
    if (out.held < stretch) out.held = stretch;
    if (!out.met && stretch >= step.hold) out.met = *since + step.hold;
  }
  return out;
}

}  // namespace detail

PLATEWRIGHT_BODY LethalityCheck check_lethality(const CoreCurve& curve,
                                                const LethalityStandard& standard) {
  LethalityCheck out;
  for (const LethalityStep& step : standard.steps) {
    out.steps.push_back(detail::step_held(step, curve));
  }
  return out;
}

PLATEWRIGHT_BODY LethalityStandard roast_standard(const SafetyTable& table) {
  LethalityStandard out{"FDA Food Code 2022", "whole meat roast", "", {}, "", {}};
  for (const RoastHold& hold : table.roast_holds) {
    out.authority = hold.authority;
    out.row = hold.row;
    out.steps.push_back({hold.at, hold.hold});
  }
  return out;
}

namespace detail {

/// Step by step the longer hold of two tables with the same temperatures.
PLATEWRIGHT_BODY void take_longer_holds(LethalityStandard& into, const LethalityStandard& other) {
  for (std::size_t i = 0; i < into.steps.size(); ++i) {
    if (into.steps[i].hold < other.steps[i].hold) into.steps[i].hold = other.steps[i].hold;
  }
}

}  // namespace detail

PLATEWRIGHT_BODY LethalityStandard standard_for(const std::vector<LethalityStandard>& standards,
                                                std::string_view food, std::string_view reduction,
                                                const std::optional<Rational>& fat) {
  std::optional<LethalityStandard> above;
  std::optional<LethalityStandard> below;
  std::optional<Rational> most;
  std::vector<std::string> known;
  for (const LethalityStandard& standard : standards) {
    known.push_back(standard.food + ", " + standard.reduction);
    if (standard.food != food || standard.reduction != reduction) continue;
    if (!standard.fat && fat) throw Failure(problems::fat_not_asked(food));
    if (!standard.fat) return standard;
    if (!fat) throw Failure(problems::fat_not_stated(food));
    if (!most || *most < *standard.fat) most = standard.fat;
    if (*standard.fat >= *fat && (!above || *standard.fat < *above->fat)) above = standard;
    if (*standard.fat <= *fat && (!below || *below->fat < *standard.fat)) below = standard;
  }
  if (!most) {
    throw Failure(problems::word_unknown("table of lethality",
                                         std::string(food) + ", " + std::string(reduction), known));
  }
  if (!above) {
    throw Failure(problems::fat_beyond_table(as_short_decimal(*fat * 100, 2) + " %",
                                             as_short_decimal(*most * 100, 2) + " %"));
  }
  if (below) detail::take_longer_holds(*above, *below);
  return *above;
}

}  // namespace platewright
