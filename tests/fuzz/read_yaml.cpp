// SPDX-License-Identifier: MIT
// Whatever bytes a file holds, they are a node, or problems, or both; within the bounds.

#include "yaml/read_yaml.hpp"

#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <string_view>

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  const std::string_view text(reinterpret_cast<const char*>(data), size);
  platewright::ProblemList problems;
  const auto node = platewright::yaml::read_yaml(text, "fuzzed.yaml", problems);
  if (!node && !problems.has_errors()) std::abort();
  return 0;
}
