// SPDX-License-Identifier: MIT
#pragma once
// Parts of a whole, which must add up.

#include "platewright/problem/body.hpp"
#include "platewright/problem/catalogue/yield_tests.hpp"
#include "platewright/problem/failure.hpp"
#include "platewright/quantity/weight_words.hpp"

namespace platewright::detail {

/// Throws Failure, naming the difference, for parts that weigh more than the whole.
void check_parts_within(const Mass& parts, const Mass& whole);

/// Throws Failure, naming the difference, for parts that do not weigh exactly what the whole does.
void check_parts_add_up(const Mass& parts, const Mass& whole);

}  // namespace platewright::detail

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/worksheet/bodies/detail/parts.hpp"
#endif
