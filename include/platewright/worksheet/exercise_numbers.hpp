// SPDX-License-Identifier: MIT
#pragma once
// The whole numbers that exercises are drawn with.

#include <cstdint>

#include "platewright/problem/body.hpp"

namespace platewright {

/// Whole numbers that look drawn and are the same on every machine for one seed, so that a class
/// has one exercise and its teacher the solution. Not for anything that must not be guessed.
/// The mixing function of Steele, Lea and Flood, "Fast splittable pseudorandom number generators",
/// OOPSLA 2014 (SplitMix64).
class ExerciseNumbers {
 public:
  explicit ExerciseNumbers(std::uint64_t seed) : state_(seed) {}

  /// The next 64 bits.
  std::uint64_t next();

  /// From `least` to `most`, each as often as the others. `most` is not below `least`.
  std::int64_t between(std::int64_t least, std::int64_t most);

 private:
  std::uint64_t state_;
};

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/worksheet/bodies/exercise_numbers.hpp"
#endif
