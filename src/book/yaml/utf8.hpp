#pragma once
// UTF-8, checked before anything else looks at a text.

#include <cstddef>
#include <optional>
#include <string_view>

namespace platewright::yaml {

/// The offset of the first byte that is not part of a well-formed UTF-8 sequence (RFC 3629: no
/// overlong forms, no surrogates, nothing above U+10FFFF); nothing where the text is sound.
inline std::optional<std::size_t> first_bad_byte(std::string_view text) {
  std::size_t i = 0;
  while (i < text.size()) {
    const auto byte = static_cast<unsigned char>(text[i]);
    std::size_t more = 0;
    unsigned low = 0x80U;
    unsigned high = 0xBFU;
    if (byte < 0x80U) {
      more = 0;
    } else if (byte >= 0xC2U && byte <= 0xDFU) {
      more = 1;
    } else if (byte >= 0xE0U && byte <= 0xEFU) {
      more = 2;
      if (byte == 0xE0U) low = 0xA0U;
      if (byte == 0xEDU) high = 0x9FU;
    } else if (byte >= 0xF0U && byte <= 0xF4U) {
      more = 3;
      if (byte == 0xF0U) low = 0x90U;
      if (byte == 0xF4U) high = 0x8FU;
    } else {
      return i;
    }
    for (std::size_t k = 1; k <= more; ++k) {
      if (i + k >= text.size()) return i;
      const auto next = static_cast<unsigned char>(text[i + k]);
      if (next < low || next > high) return i;
      low = 0x80U;
      high = 0xBFU;
    }
    i += more + 1;
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
