// SPDX-License-Identifier: MIT
#pragma once
// How many whole things a number takes.

#include <algorithm>
#include <cstdint>

#include "platewright/number/round.hpp"
#include "platewright/problem/body.hpp"

namespace platewright {

/// More of anything than a kitchen has.
inline constexpr std::int64_t most_counted = 1000000;

/// Rounded up; a million at most.
std::int64_t whole_count(const Rational& number);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/day/bodies/whole_count.hpp"
#endif
