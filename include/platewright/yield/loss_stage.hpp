// SPDX-License-Identifier: MIT
#pragma once
// At which stage of the kitchen a loss has happened.

#include <algorithm>

#include "platewright/yield/rung.hpp"

namespace platewright {

/// The stage by which goods have lost it where nothing else is said: trim at `trimmed`, bone at
/// `carved`.
inline Stage stage_of(Loss loss) {
  switch (loss) {
    case Loss::purge:
      return Stage::thawed;
    case Loss::trim:
    case Loss::skin:
      return Stage::trimmed;
    case Loss::cooking:
    case Loss::water_taken_up:
      return Stage::cooked;
    case Loss::bone:
    case Loss::carving:
      return Stage::carved;
  }
  return Stage::served;
}

/// The same within a rung that holds the loss: never after its end.
inline Stage stage_of(Loss loss, const Rung& rung) {
  return std::min(stage_of(loss), rung.to);
}

/// Whether some of what the rung loses is gone at `stage`, which lies between its ends: an unnamed
/// loss on the way to the plate is of the oven and of the knife. Carved meat has lost what a rung
/// from the oven to the plate holds; trimmed meat has lost nothing of a rung that holds the
/// cooking.
inline bool lost_by(const Rung& rung, Stage stage) {
  const auto gone = [&](Stage at) { return at > rung.from && at <= stage; };
  if (rung.holds.empty()) return gone(Stage::cooked) || gone(Stage::carved);
  return std::any_of(rung.holds.begin(), rung.holds.end(),
                     [&](Loss loss) { return gone(stage_of(loss, rung)); });
}

}  // namespace platewright
