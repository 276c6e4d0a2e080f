// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/yield/cut.hpp.

#include "platewright/yield/cut.hpp"

namespace platewright {

PLATEWRIGHT_BODY Cut as_bought(Cut cut) {
  if (!cut.ladder.loses_nothing()) {
    cut.ladder = Ladder(cut.ladder.rungs(), held_as_bought(cut.bought));
  }
  return cut;
}

}  // namespace platewright
