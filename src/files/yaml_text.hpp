// SPDX-License-Identifier: MIT
#pragma once
// Texts as a file of ours holds them.

#include <string>

namespace platewright::reading {

/// A text between quotation marks, as YAML reads it.
inline std::string yaml_text(const std::string& text) {
  std::string out = "\"";
  for (const char c : text) {
    if (c == '"' || c == '\\') out += '\\';
    if (c == '\n') {
      out += "\\n";
    } else if (c != '\r') {
      out += c;
    }
  }
  return out + "\"";
}

}  // namespace platewright::reading
