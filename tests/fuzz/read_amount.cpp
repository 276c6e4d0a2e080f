// SPDX-License-Identifier: MIT
// Whatever is typed as an amount is one, with a range the right way round, or a problem.

#include "platewright/quantity/read_amount.hpp"

#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <string_view>

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  using namespace platewright;
  static const UnitTable table;
  const std::string_view text(reinterpret_cast<const char*>(data), size);
  try {
    const LineAmount amount = read_line_amount(text, table, MeasuringSystem::us);
    if (amount.low() && amount.low()->number < 0) std::abort();
    if (amount.high() && amount.high()->number <= amount.low()->number) std::abort();
  } catch (const Failure&) {
  }
  return 0;
}
