// SPDX-License-Identifier: MIT
#pragma once
// The whole numbers that exercises are drawn with.

#include <cstdint>

namespace platewright {

/// Whole numbers that look drawn and are the same on every machine for one seed, so that a class
/// has one exercise and its teacher the solution. Not for anything that must not be guessed.
/// The mixing function of Steele, Lea and Flood, "Fast splittable pseudorandom number generators",
/// OOPSLA 2014 (SplitMix64).
class ExerciseNumbers {
 public:
  explicit ExerciseNumbers(std::uint64_t seed) : state_(seed) {}

  /// The next 64 bits.
  std::uint64_t next() {
    state_ += 0x9E3779B97F4A7C15ULL;
    std::uint64_t bits = state_;
    bits = (bits ^ (bits >> 30U)) * 0xBF58476D1CE4E5B9ULL;
    bits = (bits ^ (bits >> 27U)) * 0x94D049BB133111EBULL;
    return bits ^ (bits >> 31U);
  }

  /// From `least` to `most`, each as often as the others. `most` is not below `least`.
  std::int64_t between(std::int64_t least, std::int64_t most) {
    const std::uint64_t width = static_cast<std::uint64_t>(most - least) + 1;
    // What is above the last whole multiple would favour small numbers.
    const std::uint64_t top = UINT64_MAX - UINT64_MAX % width;
    std::uint64_t bits = next();
    while (bits >= top) bits = next();
    return least + static_cast<std::int64_t>(bits % width);
  }

 private:
  std::uint64_t state_;
};

}  // namespace platewright
