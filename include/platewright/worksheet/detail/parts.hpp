// SPDX-License-Identifier: MIT
#pragma once
// Parts of a whole, which must add up.

#include "platewright/problem/catalogue/yield_tests.hpp"
#include "platewright/problem/failure.hpp"
#include "platewright/quantity/weight_words.hpp"

namespace platewright::detail {

/// Throws Failure, naming the difference, for parts that weigh more than the whole.
inline void check_parts_within(const Mass& parts, const Mass& whole) {
  if (parts > whole) {
    throw Failure(problems::parts_above_whole(weight_words(parts), weight_words(whole),
                                              weight_words(parts - whole)));
  }
}

/// Throws Failure, naming the difference, for parts that do not weigh exactly what the whole does.
inline void check_parts_add_up(const Mass& parts, const Mass& whole) {
  check_parts_within(parts, whole);
  if (parts < whole) {
    throw Failure(problems::parts_unaccounted(weight_words(parts), weight_words(whole),
                                              weight_words(whole - parts)));
  }
}

}  // namespace platewright::detail
