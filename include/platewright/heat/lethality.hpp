// SPDX-License-Identifier: MIT
#pragma once
// Whether a core curve holds a temperature as long as an authority's table asks.

#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "platewright/heat/core_curve.hpp"
#include "platewright/number/write.hpp"
#include "platewright/problem/body.hpp"
#include "platewright/problem/catalogue/books.hpp"
#include "platewright/problem/catalogue/heat.hpp"
#include "platewright/safety/safety_table.hpp"

namespace platewright {

/// Held at `at` or above for `hold`; a hold of 0 means that reaching it is enough.
struct LethalityStep {
  Temperature at = Temperature::celsius(0);
  Duration hold;
};

/// One authority's table for one kind of food.
struct LethalityStandard {
  std::string authority;
  std::string food;
  std::string reduction;        ///< `6.5 log` of Salmonella; empty where the table says none
  std::optional<Rational> fat;  ///< the share of fat that the holds are for
  std::string row;
  std::vector<LethalityStep> steps;  ///< by rising temperature
};

/// A step against a curve.
struct StepHeld {
  LethalityStep step;
  bool reached = false;
  Duration held;                ///< the longest stretch at the step's temperature or above
  std::optional<Duration> met;  ///< the time on the curve at which the step is met

  /// What is missing of the hold; 0 where it is met.
  Duration missing() const { return met ? Duration{} : step.hold - held; }
};

struct LethalityCheck {
  std::vector<StepHeld> steps;

  /// The step that is met first; nothing where the table is not met.
  std::optional<StepHeld> met() const;

  /// Of the steps that were reached and not met, the one with the least missing; nothing where none
  /// was reached, and where the table is met.
  std::optional<StepHeld> nearest() const;
};

/// Each step of the table against the longest unbroken stretch of the curve at its temperature or
/// above. Nothing is interpolated: a reading counts for the steps at or below it, the time between
/// two readings for those that both of them reach, and shares of several steps are never added up.
/// A curve meets the table where it meets one of its steps.
LethalityCheck check_lethality(const CoreCurve& curve, const LethalityStandard& standard);

/// The step table of whole meat roasts in food service (FDA Food Code 2022, 3-401.11(B)).
LethalityStandard roast_standard(const SafetyTable& table);

/// The table for this food, reduction and, where the tables go by it, share of fat: that of the
/// next share at or above it, or below it where the hold is longer there, as a table need not rise
/// with every step. Less fat than the least of the tables counts as the least. Throws Failure for a
/// food or a reduction that has no table, for more fat than the tables end with, and for a share of
/// fat that is missing where they go by it or said where they do not.
LethalityStandard standard_for(const std::vector<LethalityStandard>& standards,
                               std::string_view food, std::string_view reduction,
                               const std::optional<Rational>& fat);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/heat/bodies/lethality.hpp"
#endif
