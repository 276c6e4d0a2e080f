// SPDX-License-Identifier: MIT
#pragma once
// A tested yield beside the one that the table has for the same step.

#include <optional>
#include <vector>

#include "platewright/problem/body.hpp"
#include "platewright/worksheet/cooking_loss_test.hpp"
#include "platewright/worksheet/trim_test.hpp"
#include "platewright/yield/ladder.hpp"

namespace platewright {

/// What the worksheets of one piece found, as far as they were worked. Weight out over weight in.
struct TestedYields {
  std::optional<Rational> trimming;  ///< usable / purchased
  std::optional<Rational> cooking;   ///< cooked / oven-ready
  std::optional<Rational> carving;   ///< saleable / cooked

  static TestedYields of(const std::optional<TrimTestResult>& trim,
                         const std::optional<CookingLossResult>& cooking);
};

/// A rung of the table and the test of the same step.
struct HandbookComparison {
  Rung rung;
  Rational tested;
  /// The test begins with the piece that goes into the oven, though the rung begins before that.
  bool from_oven_ready = false;
  /// (tested - table) / standard deviation; none where the table prints no deviation.
  std::optional<Rational> deviations;
  /// Whether the test lies within the lowest and highest yield printed; none without both.
  std::optional<bool> within_range;
  /// The row is of goods with the bone and the test of goods without it, or the other way round.
  bool other_cut = false;
};

/// Each rung of the ladder for which a test was made, in the ladder's order.
std::vector<HandbookComparison> beside_handbook(const Ladder& ladder, const TestedYields& tested);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/worksheet/bodies/handbook.hpp"
#endif
