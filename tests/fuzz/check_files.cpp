// SPDX-License-Identifier: MIT
// Whatever a file of the book says, it is read, or there are problems; nothing else is thrown.

#include "platewright/files/check_files.hpp"

#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <fstream>
#include <string>

#include "support/folder.hpp"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  static const platewright::test::TemporaryFolder folder;
  const std::string file = (folder.path() / "fuzzed.yaml").string();
  std::ofstream(file, std::ios::binary)
      .write(reinterpret_cast<const char*>(data), static_cast<std::streamsize>(size));
  platewright::ProblemList problems;
  const auto checked = platewright::check_files({file}, problems);
  const bool in_order = checked.single.empty() || checked.single.front().in_order;
  if (!in_order && !problems.has_errors()) std::abort();
  return 0;
}
