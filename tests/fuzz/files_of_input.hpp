// SPDX-License-Identifier: MIT
#pragma once
// Several files in one input of a fuzzer.

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <filesystem>
#include <fstream>
#include <string>
#include <string_view>
#include <vector>

#include "support/folder.hpp"

namespace platewright::test {

/// The name of a file of the folder itself: small letters and dashes, `.yaml` or `.csv`.
inline bool may_be_file(std::string_view name) {
  const std::size_t dot = name.rfind('.');
  if (dot == 0 || dot == std::string_view::npos || dot > 30) return false;
  const std::string_view ending = name.substr(dot);
  return (ending == ".yaml" || ending == ".csv") &&
         name.substr(0, dot).find_first_not_of("abcdefghijklmnopqrstuvwxyz-") ==
             std::string_view::npos;
}

/// Writes the files of an input into a folder that is empty before. Each begins behind a line
/// `== NAME`; what stands before the first such line is left out, and so is one with another kind
/// of name. Their names, in the order of the input, each once.
inline std::vector<std::string> files_of_input(const std::uint8_t* data, std::size_t size,
                                               const std::filesystem::path& folder) {
  for (const auto& entry : std::filesystem::directory_iterator(folder)) {
    std::filesystem::remove_all(entry.path());
  }
  std::string_view rest(reinterpret_cast<const char*>(data), size);
  std::vector<std::string> names;
  std::ofstream out;
  while (!rest.empty()) {
    const std::size_t end = std::min(rest.find('\n'), rest.size() - 1);
    const std::string_view line = rest.substr(0, end + 1);
    rest.remove_prefix(end + 1);
    if (line.substr(0, 3) != "== ") {
      if (out.is_open()) out << line;
      continue;
    }
    if (out.is_open()) out.close();
    const std::string name(line.substr(3, line.find_last_not_of("\r\n") - 2));
    if (!may_be_file(name)) continue;
    if (std::find(names.begin(), names.end(), name) == names.end()) names.push_back(name);
    out.open(folder / name, std::ios::binary | std::ios::trunc);
  }
  return names;
}

}  // namespace platewright::test
