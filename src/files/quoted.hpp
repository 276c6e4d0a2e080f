// SPDX-License-Identifier: MIT
#pragma once
// Text of a file that is written.

#include <string>

namespace platewright::reading {

inline std::string quoted(const std::string& text) {
  std::string out = "\"";
  for (const char c : text) {
    if (c == '"' || c == '\\') out += '\\';
    out += c;
  }
  return out + "\"";
}

}  // namespace platewright::reading
