// SPDX-License-Identifier: MIT
#pragma once
// UTF-8, checked before anything else looks at a text.

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>

#include "platewright/problem/problem_list.hpp"
#include "platewright/problem/utf8.hpp"

namespace platewright::yaml {

/// The offset of the first byte that is not part of a well-formed UTF-8 sequence (RFC 3629: no
/// overlong forms, no surrogates, nothing above U+10FFFF); nothing where the text is sound.
inline std::optional<std::size_t> first_bad_byte(std::string_view text) {
  std::size_t i = 0;
  while (i < text.size()) {
    const std::size_t length = character_at(text, i).length;
    if (length == 0) return i;
    i += length;
  }
  return std::nullopt;
}

/// What a text that is no UTF-8 most likely is, by the name that `iconv` knows; empty where that
/// can't be told. A byte that Windows-1252 does not have, or that no text holds, is a sign of
/// neither.
inline std::string_view likely_encoding(std::string_view text) {
  if (text.starts_with("\xFF\xFE") || text.starts_with("\xFE\xFF")) return "UTF-16";
  for (const char c : text) {
    const auto byte = static_cast<unsigned char>(c);
    const bool unused =
        byte == 0x81 || byte == 0x8D || byte == 0x8F || byte == 0x90 || byte == 0x9D;
    const bool control = byte < 0x20U && byte != '\t' && byte != '\n' && byte != '\r';
    if (unused || control) return {};
  }
  return "WINDOWS-1252";
}

/// The offset of the first control character other than tab, line feed and carriage return.
inline std::optional<std::size_t> first_control_character(std::string_view text) {
  for (std::size_t i = 0; i < text.size(); ++i) {
    const auto byte = static_cast<unsigned char>(text[i]);
    if ((byte < 0x20U && byte != '\t' && byte != '\n' && byte != '\r') || byte == 0x7FU) return i;
  }
  return std::nullopt;
}

/// Whether it is UTF-8 without control characters.
inline bool is_sound(std::string_view text) {
  return !first_bad_byte(text) && !first_control_character(text);
}

/// As `is_sound`; what is wrong goes into `problems`, at its line and column in `file`.
bool check_sound(std::string_view text, const std::string& file, ProblemList& problems);

}  // namespace platewright::yaml
