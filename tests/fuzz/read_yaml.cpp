// SPDX-License-Identifier: MIT
// Whatever bytes a file holds, they are a node, or problems, or both; within the bounds. What is
// read without the library, the library reads too.

#include "yaml/read_yaml.hpp"

#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <string_view>

#include "support/same_nodes.hpp"
#include "yaml/library_yaml.hpp"
#include "yaml/plain_yaml.hpp"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  const std::string_view text(reinterpret_cast<const char*>(data), size);
  platewright::ProblemList problems;
  const auto node = platewright::yaml::read_yaml(text, "fuzzed.yaml", problems);
  if (!node && !problems.has_errors()) std::abort();
  if (node && platewright::yaml::read_plain_yaml(text, {})) {
    const auto all = platewright::yaml::read_library_yaml(text, "fuzzed.yaml", problems, {});
    if (!all || !problems.all().empty() || !platewright::test::same_nodes(*node, *all)) {
      std::abort();
    }
  }
  return 0;
}
