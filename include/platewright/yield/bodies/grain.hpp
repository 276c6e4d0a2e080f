// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/yield/grain.hpp.

#include "platewright/yield/grain.hpp"

namespace platewright {

PLATEWRIGHT_BODY Ladder ladder_of(const Grain& grain) {
  return Ladder({{Stage::purchased,
                  Stage::cooked,
                  grain.yield,
                  {Loss::water_taken_up},
                  grain.note,
                  {},
                  grain.source,
                  false}});
}

}  // namespace platewright
