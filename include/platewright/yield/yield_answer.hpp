// SPDX-License-Identifier: MIT
#pragma once
// Everything that is asked of one ladder, and what it answers.

#include <optional>
#include <vector>

#include "platewright/problem/body.hpp"
#include "platewright/yield/how_sure.hpp"
#include "platewright/yield/portion_size.hpp"

namespace platewright {

/// What is asked. Each is worked out only where its figures are there.
struct YieldQuestion {
  std::optional<Mass> buy;             ///< what does this weight serve?
  std::optional<Rational> guests;      ///< what to buy for so many portions?
  std::optional<PortionSize> portion;  ///< a portion at the plate
  std::optional<Mass> piece;           ///< average weight of a whole piece as purchased
  /// Standard deviation of the pieces' weight; none where it is not known.
  std::optional<Mass> piece_spread;
  std::optional<Rational> probability;  ///< how sure, as 19/20
};

/// What a weight on hand comes to.
struct YieldDown {
  std::vector<LadderStep> walk;
  std::optional<PortionsServed> serves;
  /// The portion that it gives each of the guests, where no portion was named.
  std::optional<Mass> portion_each;
};

/// What the guests need.
struct YieldUp {
  std::vector<LadderStep> walk;
  WeightToBuy need;
  std::optional<PiecesToBuy> pieces;
  std::optional<SureWeight> sure;
  std::optional<SurePieces> sure_pieces;
};

struct YieldAnswer {
  YieldQuestion question;
  Ladder ladder;
  /// Weight of a portion at the plate.
  std::optional<Mass> portion;
  std::optional<YieldDown> down;
  std::optional<YieldUp> up;
};

/// Answers what can be answered. Throws Failure for figures of 0 or less, a portion by the rib
/// without a piece, and as `sure_weight` and `sure_pieces` do.
YieldAnswer answer(const Ladder& ladder, const YieldQuestion& question);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/yield/bodies/yield_answer.hpp"
#endif
