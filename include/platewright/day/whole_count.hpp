// SPDX-License-Identifier: MIT
#pragma once
// How many whole things a number takes.

#include <algorithm>
#include <cstdint>

#include "platewright/number/round.hpp"

namespace platewright {

/// More of anything than a kitchen has.
inline constexpr std::int64_t most_counted = 1000000;

/// Rounded up; a million at most.
inline std::int64_t whole_count(const Rational& number) {
  if (number > most_counted) return most_counted;
  return static_cast<std::int64_t>(ceiling_of(number));
}

}  // namespace platewright
