// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/yield/yield_answer.hpp.

#include "platewright/yield/yield_answer.hpp"

namespace platewright {

namespace detail {

PLATEWRIGHT_BODY YieldDown answer_down(const Ladder& ladder, const YieldQuestion& question,
                                       const std::optional<Mass>& portion) {
  YieldDown down{ladder.walk(*question.buy), {}, {}};
  if (portion) {
    down.serves = portions_from(ladder, *question.buy, *portion);
  } else if (question.guests) {
    down.portion_each = portion_for(ladder, *question.buy, *question.guests);
  }
  return down;
}

PLATEWRIGHT_BODY YieldUp answer_up(const Ladder& ladder, const YieldQuestion& question,
                                   const Mass& portion) {
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

PLATEWRIGHT_BODY YieldAnswer answer(const Ladder& ladder, const YieldQuestion& question) {
  YieldAnswer out{question, ladder, {}, {}, {}};
  if (question.portion) out.portion = portion_at_plate(*question.portion, ladder, question.piece);
  if (question.buy) out.down = detail::answer_down(ladder, question, out.portion);
  if (question.guests && out.portion) {
    out.up = detail::answer_up(ladder, question, *out.portion);
  }
  return out;
}

}  // namespace platewright
