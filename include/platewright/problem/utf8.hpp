// SPDX-License-Identifier: MIT
#pragma once
// One character at a time out of UTF-8 that may be broken.

#include <cstddef>
#include <string_view>

namespace platewright {

/// A character and how many bytes it took. A `length` of 0 says that no well-formed sequence stands
/// there.
struct Character {
  char32_t code = 0;
  std::size_t length = 0;
};

/// The character that begins at `position`, which must be inside `text`. Well-formed is what RFC
/// 3629 says: no overlong form, no surrogate, nothing above U+10FFFF.
inline Character character_at(std::string_view text, std::size_t position) {
  const auto lead = static_cast<unsigned char>(text[position]);
  if (lead < 0x80U) return {lead, 1};
  std::size_t length = 0;
  char32_t code = 0;
  char32_t smallest = 0;
  if (lead >= 0xC2U && lead <= 0xDFU) {
    length = 2;
    code = lead & 0x1FU;
    smallest = 0x80;
  } else if (lead >= 0xE0U && lead <= 0xEFU) {
    length = 3;
    code = lead & 0x0FU;
    smallest = 0x800;
  } else if (lead >= 0xF0U && lead <= 0xF4U) {
    length = 4;
    code = lead & 0x07U;
    smallest = 0x10000;
  }
  if (length == 0 || text.size() - position < length) return {};
  for (std::size_t i = 1; i < length; ++i) {
    const auto next = static_cast<unsigned char>(text[position + i]);
    if ((next & 0xC0U) != 0x80U) return {};
    code = (code << 6U) | (next & 0x3FU);
  }
  const bool surrogate = code >= 0xD800 && code <= 0xDFFF;
  if (code < smallest || surrogate || code > 0x10FFFF) return {};
  return {code, length};
}

}  // namespace platewright
