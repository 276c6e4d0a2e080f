// SPDX-License-Identifier: MIT
#pragma once
// The difference between an expected text and a found one, as short as a reader needs it.

#include <algorithm>
#include <cstddef>
#include <string>

#include "support/folder.hpp"

namespace platewright::test {

/// Empty if the texts are alike; else the first lines that differ, with one line before them.
inline std::string difference(const std::string& expected, const std::string& found) {
  if (expected == found) return {};
  const auto wanted = lines_of(expected);
  const auto got = lines_of(found);
  std::size_t first = 0;
  while (first < std::min(wanted.size(), got.size()) && wanted[first] == got[first]) ++first;
  std::string out;
  if (first > 0) out += "    " + wanted[first - 1] + "\n";
  const std::size_t last = first + 12;
  for (std::size_t i = first; i < std::min(wanted.size(), last); ++i)
    out += "  - " + wanted[i] + "\n";
  if (wanted.size() > last) out += "  - ...\n";
  for (std::size_t i = first; i < std::min(got.size(), last); ++i) out += "  + " + got[i] + "\n";
  if (got.size() > last) out += "  + ...\n";
  if (first == wanted.size() && first == got.size()) out += "  (only the last line end differs)\n";
  return out;
}

}  // namespace platewright::test
