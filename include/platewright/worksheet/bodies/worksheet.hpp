// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/worksheet/worksheet.hpp.

#include <algorithm>

#include "platewright/worksheet/worksheet.hpp"

namespace platewright {

PLATEWRIGHT_BODY bool HandbookRow::has_other_cut() const {
  return std::any_of(comparisons.begin(), comparisons.end(),
                     [](const HandbookComparison& one) { return one.other_cut; });
}

}  // namespace platewright
