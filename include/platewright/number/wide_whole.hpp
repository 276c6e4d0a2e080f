// SPDX-License-Identifier: MIT
#pragma once
// Whole numbers of 128 bits, which both compilers have and the standard has not.

#include <cstdint>

namespace platewright {

__extension__ using WideWhole = unsigned __int128;
__extension__ using SignedWideWhole = __int128;

inline std::uint64_t high_half(WideWhole value) {
  return static_cast<std::uint64_t>(value >> 64U);
}
inline std::uint64_t low_half(WideWhole value) {
  return static_cast<std::uint64_t>(value);
}

/// All 128 bits of the product.
inline WideWhole wide_product(std::uint64_t left, std::uint64_t right) {
  return static_cast<WideWhole>(left) * right;
}

/// What fits into 64 bits: the high half of `value` must be below the divisor.
inline std::uint64_t narrow_quotient(WideWhole value, std::uint64_t divisor) {
#if defined(__x86_64__)
  // One instruction, for which the compilers call a function that divides any two such numbers.
  std::uint64_t quotient = 0;
  std::uint64_t rest = 0;
  __asm__("divq %4"
          : "=a"(quotient), "=d"(rest)
          : "a"(low_half(value)), "d"(high_half(value)), "r"(divisor)
          : "cc");
  return quotient;
#else
  return low_half(value / divisor);
#endif
}

}  // namespace platewright
