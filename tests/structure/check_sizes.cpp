// SPDX-License-Identifier: MIT
// Source files stay small: `check_sizes ROOT`. Half of them under 150 lines, 95 in 100 under 350,
// none past 500, and no line past 100 columns.

#include <algorithm>
#include <cstddef>
#include <exception>
#include <filesystem>
#include <iostream>
#include <string>
#include <vector>

#include "support/folder.hpp"

namespace platewright::test {
namespace {

namespace fs = std::filesystem;

/// Columns as an editor counts them: bytes that only continue a UTF-8 sequence take none.
std::size_t columns(const std::string& line) {
  return static_cast<std::size_t>(std::count_if(line.begin(), line.end(), [](char c) {
    return (static_cast<unsigned char>(c) & 0xC0U) != 0x80U;
  }));
}

bool check(const fs::path& root) {
  bool good = true;
  std::vector<std::size_t> sizes;
  for (const char* top : {"include", "src", "tests", "examples"}) {
    for (const auto& entry : fs::recursive_directory_iterator(root / top)) {
      const std::string extension = entry.path().extension().string();
      if (extension != ".hpp" && extension != ".cpp") continue;
      const std::string file = fs::relative(entry.path(), root).string();
      const auto lines = lines_of(read_file(entry.path()));
      sizes.push_back(lines.size());
      if (lines.size() > 500) {
        good = false;
        std::cout << file << ": " << lines.size() << " lines, so two ideas in one file\n";
      }
      for (std::size_t i = 0; i < lines.size(); ++i) {
        if (columns(lines[i]) <= 100) continue;
        good = false;
        std::cout << file << ":" << i + 1 << ": " << columns(lines[i]) << " columns\n";
      }
    }
  }
  std::sort(sizes.begin(), sizes.end());
  const std::size_t half = sizes.at(sizes.size() / 2);
  const std::size_t most = sizes.at(sizes.size() * 95 / 100);
  std::cout << sizes.size() << " files, half under " << half + 1 << " lines, 95 in 100 under "
            << most + 1 << "\n";
  return good && half < 150 && most < 350;
}

}  // namespace
}  // namespace platewright::test

int main(int count, char** arguments) {
  try {
    if (count != 2) throw std::runtime_error("check_sizes ROOT");
    return platewright::test::check(arguments[1]) ? 0 : 1;
  } catch (const std::exception& error) {
    std::cerr << error.what() << "\n";
    return 2;
  }
}
