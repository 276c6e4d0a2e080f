// SPDX-License-Identifier: MIT
#pragma once
// Everything that is asked of one ladder, and what it answers.

#include <optional>
#include <vector>

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

namespace detail {

inline YieldDown answer_down(const Ladder& ladder, const YieldQuestion& question,
                             const std::optional<Mass>& portion) {
  YieldDown down{ladder.walk(*question.buy), {}, {}};
  if (portion) {
    down.serves = portions_from(ladder, *question.buy, *portion);
  } else if (question.guests) {
    down.portion_each = portion_for(ladder, *question.buy, *question.guests);
  }
  return down;
}

inline YieldUp answer_up(const Ladder& ladder, const YieldQuestion& question, const Mass& portion) {
  YieldUp up;
  up.need = weight_to_buy(ladder, *question.guests, portion);
  up.walk = ladder.walk(up.need.purchased);
  if (question.piece) up.pieces = pieces_to_buy(ladder, up.need, *question.piece);
  if (!question.probability) return up;
  if (question.piece) {
    up.sure_pieces =
        sure_pieces(ladder, up.need, {*question.piece, question.piece_spread.value_or(Mass{})},
                    *question.probability);
  } else {
    up.sure = sure_weight(ladder, up.need, *question.probability);
  }
  return up;
}

}  // namespace detail

/// Answers what can be answered. Throws Failure for figures of 0 or less, a portion by the rib
/// without a piece, and as `sure_weight` and `sure_pieces` do.
inline YieldAnswer answer(const Ladder& ladder, const YieldQuestion& question) {
  YieldAnswer out{question, ladder, {}, {}, {}};
  if (question.portion) out.portion = portion_at_plate(*question.portion, ladder, question.piece);
  if (question.buy) out.down = detail::answer_down(ladder, question, out.portion);
  if (question.guests && out.portion) {
    out.up = detail::answer_up(ladder, question, *out.portion);
  }
  return out;
}

}  // namespace platewright
