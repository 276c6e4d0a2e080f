// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/worksheet/marked_answer.hpp.

#include "platewright/worksheet/marked_answer.hpp"

namespace platewright {

PLATEWRIGHT_BODY bool MarkedAnswer::went(Astray astray) const {
  for (const FoundSlip& slip : slips) {
    if (slip.astray == astray) return true;
  }
  return false;
}

}  // namespace platewright
