// SPDX-License-Identifier: MIT
#pragma once
// Small helpers that every problem's wording uses.

#include <cstddef>
#include <string>
#include <string_view>

#include "platewright/problem/unseen.hpp"
#include "platewright/problem/utf8.hpp"

namespace platewright {

/// `text` with its control characters, its signs that turn the reading direction and its bytes that
/// are not UTF-8 written as escapes (`\x1B`, `\u202E`, `\U000E0001`), so that a hostile name can't
/// change how a message or a sheet is shown. What comes out is always valid UTF-8.
inline std::string escaped(std::string_view text) {
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

/// Without the spaces and tabs at both ends.
inline std::string_view trimmed_spaces(std::string_view text) {
  while (!text.empty() && (text.front() == ' ' || text.front() == '\t')) text.remove_prefix(1);
  while (!text.empty() && (text.back() == ' ' || text.back() == '\t')) text.remove_suffix(1);
  return text;
}

/// `text` between quotation marks, shortened to `limit` bytes (never inside a UTF-8 sequence) and
/// `escaped`.
inline std::string in_quotes(std::string_view text, std::size_t limit = 60) {
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
