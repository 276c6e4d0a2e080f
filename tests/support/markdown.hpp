// SPDX-License-Identifier: MIT
#pragma once
// The fenced blocks of a Markdown page.

#include <cstddef>
#include <filesystem>
#include <stdexcept>
#include <string>
#include <vector>

#include "support/folder.hpp"

namespace platewright::test {

struct FencedBlock {
  std::string language;
  std::vector<std::string> lines;
  /// The number of the page's line after the opening fence, from 1.
  std::size_t first_line = 0;
};

inline std::vector<FencedBlock> fenced_blocks(const std::filesystem::path& page) {
  std::vector<FencedBlock> blocks;
  bool inside = false;
  std::size_t number = 0;
  for (const std::string& line : lines_of(read_file(page))) {
    ++number;
    std::string language;
    if (!takes(line, "```", language)) {
      if (inside) blocks.back().lines.push_back(line);
    } else if (inside) {
      inside = false;
    } else {
      inside = true;
      blocks.push_back(FencedBlock{language, {}, number + 1});
    }
  }
  if (inside) throw std::runtime_error(page.string() + ": a fenced block is not closed");
  return blocks;
}

}  // namespace platewright::test
