// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/worksheet/detail/parts.hpp.

#include "platewright/worksheet/detail/parts.hpp"

namespace platewright::detail {

PLATEWRIGHT_BODY void check_parts_within(const Mass& parts, const Mass& whole) {
  if (parts > whole) {
    throw Failure(problems::parts_above_whole(weight_words(parts), weight_words(whole),
                                              weight_words(parts - whole)));
  }
}

PLATEWRIGHT_BODY void check_parts_add_up(const Mass& parts, const Mass& whole) {
  check_parts_within(parts, whole);
  if (parts < whole) {
    throw Failure(problems::parts_unaccounted(weight_words(parts), weight_words(whole),
                                              weight_words(whole - parts)));
  }
}

}  // namespace platewright::detail
