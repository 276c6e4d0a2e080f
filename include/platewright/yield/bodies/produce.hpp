// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/yield/produce.hpp.

#include "platewright/yield/produce.hpp"

namespace platewright {

PLATEWRIGHT_BODY Ladder ladder_of(const Produce& produce) {
  return Ladder({{Stage::purchased,
                  Stage::trimmed,
                  produce.yield,
                  {Loss::trim, Loss::skin},
                  produce.trim,
                  {},
                  produce.source,
                  false}});
}

}  // namespace platewright
