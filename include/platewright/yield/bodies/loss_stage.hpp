// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/yield/loss_stage.hpp.

#include "platewright/yield/loss_stage.hpp"

namespace platewright {

PLATEWRIGHT_BODY Stage stage_of(Loss loss) {
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

PLATEWRIGHT_BODY bool lost_by(const Rung& rung, Stage stage) {
  const auto gone = [&](Stage at) { return at > rung.from && at <= stage; };
  if (rung.holds.empty()) return gone(Stage::cooked) || gone(Stage::carved);
  return std::any_of(rung.holds.begin(), rung.holds.end(),
                     [&](Loss loss) { return gone(stage_of(loss, rung)); });
}

}  // namespace platewright
