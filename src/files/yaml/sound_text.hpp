#pragma once
// UTF-8, checked before anything else looks at a text.

#include <cstddef>
#include <optional>
#include <string_view>

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

/// The offset of the first control character other than tab, line feed and carriage return.
inline std::optional<std::size_t> first_control_character(std::string_view text) {
  for (std::size_t i = 0; i < text.size(); ++i) {
    const auto byte = static_cast<unsigned char>(text[i]);
    if ((byte < 0x20U && byte != '\t' && byte != '\n' && byte != '\r') || byte == 0x7FU) return i;
  }
  return std::nullopt;
}

}  // namespace platewright::yaml
