// SPDX-License-Identifier: MIT
#pragma once
// The weight that covers the guests at a stated probability, not at the average alone.
//
// Method (standard propagation of error, normal approximation): what k independent roasts give at
// the plate is taken as normal around the average, and its relative variance as the sum over the
// rungs of (standard deviation / yield)^2 x (1 / k + 1 / n). The 1 / k is for the roasts of the
// day, whose luck evens out; the 1 / n is for the published average, which n samples do not know
// exactly. Pieces bought by number add (standard deviation of a piece / its average weight)^2 / k.

#include <optional>
#include <string>
#include <vector>

#include "platewright/number/square_root.hpp"
#include "platewright/problem/body.hpp"
#include "platewright/problem/catalogue/yield_tests.hpp"
#include "platewright/yield/detail/normal.hpp"
#include "platewright/yield/portions.hpp"

namespace platewright {

/// The answer to "how much, to be this sure", beside the weight at the average.
struct SureWeight {
  Rational probability;
  WeightToBuy average;
  /// None where a rung has no published standard deviation: then it can't be told.
  std::optional<Mass> purchased;
  /// The rungs without one, as in `cooked to served`.
  std::vector<std::string> unknown;

  bool can_tell() const { return purchased.has_value(); }
};

/// What pieces weigh as purchased.
struct PieceSpread {
  Mass average;
  Mass standard_deviation;
};

/// The same in whole pieces.
struct SurePieces {
  Rational probability;
  PiecesToBuy average;
  std::optional<PiecesToBuy> sure;
  std::vector<std::string> unknown;

  bool can_tell() const { return sure.has_value(); }
};

/// The relative variance of a yield, split into what evens out over roasts and what does not.
struct RelativeVariance {
  Rational by_roast;
  Rational of_average;
  std::vector<std::string> unknown;

  Rational over(const Integer& roasts) const { return by_roast / Rational(roasts) + of_average; }
};

RelativeVariance relative_variance(const Ladder& ladder);

namespace detail {}  // namespace detail

/// The weight as purchased, as `roasts` pieces, that covers `need` with this probability. Throws
/// Failure for a probability outside 50 % to 99.9 %, for fewer than one roast, and for a spread so
/// wide that the margin is half of the average or more.
SureWeight sure_weight(const Ladder& ladder, const WeightToBuy& need, const Rational& probability,
                       const Integer& roasts = 1);

/// The fewest whole pieces that cover `need` with this probability. Throws Failure as `sure_weight`
/// does, and for pieces whose spread is half of their average or more.
SurePieces sure_pieces(const Ladder& ladder, const WeightToBuy& need, const PieceSpread& piece,
                       const Rational& probability);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/yield/bodies/how_sure.hpp"
#endif
