// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/worksheet/exercise_numbers.hpp.

#include "platewright/worksheet/exercise_numbers.hpp"

namespace platewright {

PLATEWRIGHT_BODY std::uint64_t ExerciseNumbers::next() {
  state_ += 0x9E3779B97F4A7C15ULL;
  std::uint64_t bits = state_;
  bits = (bits ^ (bits >> 30U)) * 0xBF58476D1CE4E5B9ULL;
  bits = (bits ^ (bits >> 27U)) * 0x94D049BB133111EBULL;
  return bits ^ (bits >> 31U);
}

PLATEWRIGHT_BODY std::int64_t ExerciseNumbers::between(std::int64_t least, std::int64_t most) {
  const std::uint64_t width = static_cast<std::uint64_t>(most - least) + 1;
  // What is above the last whole multiple would favour small numbers.
  const std::uint64_t top = UINT64_MAX - UINT64_MAX % width;
  std::uint64_t bits = next();
  while (bits >= top) bits = next();
  return least + static_cast<std::int64_t>(bits % width);
}

}  // namespace platewright
