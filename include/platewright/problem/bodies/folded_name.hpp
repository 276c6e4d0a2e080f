// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/problem/folded_name.hpp.

#include <algorithm>
#include <cctype>

#include "platewright/problem/folded_name.hpp"

namespace platewright {

PLATEWRIGHT_BODY std::string folded_name(std::string_view name) {
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

PLATEWRIGHT_BODY std::string folded_abbreviation(std::string_view name) {
  std::string out(name);
  out.erase(std::remove(out.begin(), out.end(), '.'), out.end());
  return folded_name(out);
}

}  // namespace platewright
