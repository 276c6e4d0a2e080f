// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/problem/text.hpp.

#include "platewright/problem/text.hpp"

namespace platewright {

PLATEWRIGHT_BODY std::string escaped(std::string_view text) {
  static constexpr char hex[] = "0123456789abcdef";
  std::string out;
  for (std::size_t i = 0; i < text.size();) {
    const Character character = character_at(text, i);
    const bool broken = character.length == 0;
    if (!broken && !is_unseen_control(character.code)) {
      out += text.substr(i, character.length);
    } else {
      const char32_t code = broken ? static_cast<unsigned char>(text[i]) : character.code;
      const bool one_byte = broken || code < 0x80;
      out += one_byte ? "\\x" : code > 0xFFFF ? "\\U" : "\\u";
      for (int shift = one_byte ? 4 : code > 0xFFFF ? 28 : 12; shift >= 0; shift -= 4)
        out += hex[(code >> shift) & 0xFU];
    }
    i += broken ? 1 : character.length;
  }
  return out;
}

PLATEWRIGHT_BODY std::string_view trimmed_spaces(std::string_view text) {
  while (!text.empty() && (text.front() == ' ' || text.front() == '\t')) text.remove_prefix(1);
  while (!text.empty() && (text.back() == ' ' || text.back() == '\t')) text.remove_suffix(1);
  return text;
}

PLATEWRIGHT_BODY std::string in_quotes(std::string_view text, std::size_t limit) {
  const bool shortened = text.size() > limit;
  if (shortened) {
    while (limit > 0 && (static_cast<unsigned char>(text[limit]) & 0xC0U) == 0x80U) --limit;
    text = text.substr(0, limit);
  }
  // Put together piece by piece: g++ 12 sees an overlap in a sum of these (GCC bug 105651).
  std::string out(1, '"');
  out += escaped(text);
  out += shortened ? "...\"" : "\"";
  return out;
}

}  // namespace platewright
