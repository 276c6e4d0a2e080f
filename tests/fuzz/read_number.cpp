// SPDX-License-Identifier: MIT
// Whatever is typed as a number is a number or a problem.

#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <string_view>

#include "platewright/number/read.hpp"
#include "platewright/problem/failure.hpp"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  const std::string_view text(reinterpret_cast<const char*>(data), size);
  try {
    const platewright::Rational number = platewright::read_number(text);
    if (number < 0) std::abort();
  } catch (const platewright::Failure&) {
  }
  return 0;
}
