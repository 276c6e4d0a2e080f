// SPDX-License-Identifier: MIT
// Stands in for the fuzzer: gives every file of the folders named to the target, whole and cut
// short at every quarter. A target that can't bear one ends the program.

#include <cstddef>
#include <cstdint>
#include <exception>
#include <filesystem>
#include <iostream>
#include <string>

#include "support/folder.hpp"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size);

namespace {

int replay(const std::filesystem::path& folder) {
  int files = 0;
  for (const auto& entry : std::filesystem::recursive_directory_iterator(folder)) {
    if (!entry.is_regular_file()) continue;
    ++files;
    const std::string text = platewright::test::read_file(entry.path());
    for (std::size_t quarters = 0; quarters <= 4; ++quarters) {
      LLVMFuzzerTestOneInput(reinterpret_cast<const std::uint8_t*>(text.data()),
                             text.size() * quarters / 4);
    }
  }
  return files;
}

}  // namespace

int main(int count, char** arguments) {
  try {
    int files = 0;
    for (int i = 1; i < count; ++i) files += replay(arguments[i]);
    std::cout << files << " files replayed\n";
    return files > 0 ? 0 : 1;
  } catch (const std::exception& error) {
    std::cerr << error.what() << "\n";
    return 2;
  }
}
