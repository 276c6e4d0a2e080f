// SPDX-License-Identifier: MIT
#pragma once
// At which stage of the kitchen a loss has happened.

#include <algorithm>

#include "platewright/problem/body.hpp"
#include "platewright/yield/rung.hpp"

namespace platewright {

/// The stage by which goods have lost it where nothing else is said: trim at `trimmed`, bone at
/// `carved`.
Stage stage_of(Loss loss);

/// The same within a rung that holds the loss: never after its end.
inline Stage stage_of(Loss loss, const Rung& rung) {
  return std::min(stage_of(loss), rung.to);
}

/// Whether some of what the rung loses is gone at `stage`, which lies between its ends: an unnamed
/// loss on the way to the plate is of the oven and of the knife. Carved meat has lost what a rung
/// from the oven to the plate holds; trimmed meat has lost nothing of a rung that holds the
/// cooking.
bool lost_by(const Rung& rung, Stage stage);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/yield/bodies/loss_stage.hpp"
#endif
