// SPDX-License-Identifier: MIT
#pragma once
// Names as they are compared: capitals and the spaces around and between words do not matter.

#include <algorithm>
#include <cctype>
#include <string>
#include <string_view>

namespace platewright {

/// Small ASCII letters and single spaces; letters beyond ASCII stay as they are. Full stops count:
/// a pan of 2.5 in is none of 25 in.
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

/// The same without full stops. For words that are written with and without them: `fl. oz.` is
/// `fl oz`.
inline std::string folded_abbreviation(std::string_view name) {
  std::string out(name);
  out.erase(std::remove(out.begin(), out.end(), '.'), out.end());
  return folded_name(out);
}

}  // namespace platewright
