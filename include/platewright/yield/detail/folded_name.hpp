#pragma once
// Names as they are compared: capitals and the spaces around and between words do not matter.

#include <cctype>
#include <string>
#include <string_view>

namespace platewright::detail {

/// Small ASCII letters and single spaces; letters beyond ASCII stay as they are.
inline std::string folded_name(std::string_view name) {
  std::string out;
  for (const char c : name) {
    const auto byte = static_cast<unsigned char>(c);
    if (c == ' ' || c == '\t') {
      if (!out.empty() && out.back() != ' ') out += ' ';
    } else {
      out += byte < 0x80U ? static_cast<char>(std::tolower(byte)) : c;
    }
  }
  if (!out.empty() && out.back() == ' ') out.pop_back();
  return out;
}

}  // namespace platewright::detail
