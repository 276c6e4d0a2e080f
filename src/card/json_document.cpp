// SPDX-License-Identifier: MIT
#include "card/json_document.hpp"

#include "platewright/problem/text.hpp"

namespace platewright {
namespace {

/// The text of a JSON document with every sign that nobody sees as an escape. Such signs stand
/// nowhere but inside strings, where `\\u202E` means the same.
std::string with_unseen_escaped(const std::string& text) {
  std::string out;
  const auto add_unit = [&out](char32_t unit) {
    out += "\\u";
    for (int shift = 12; shift >= 0; shift -= 4) out += "0123456789abcdef"[(unit >> shift) & 0xFU];
  };
  for (std::size_t i = 0; i < text.size();) {
    const Character character = character_at(text, i);
    const std::size_t length = std::max<std::size_t>(character.length, 1);
    const char32_t code = character.code;
    if (code < 0x20 || !is_unseen_control(code)) {
      out += text.substr(i, length);
    } else if (code <= 0xFFFF) {
      add_unit(code);
    } else {
      // Two units of UTF-16, as RFC 8259, section 7, wants them.
      add_unit(0xD800 + ((code - 0x10000) >> 10U));
      add_unit(0xDC00 + ((code - 0x10000) & 0x3FFU));
    }
    i += length;
  }
  return out;
}

}  // namespace

std::string json_document(const Json& document) {
  return with_unseen_escaped(document.dump(2, ' ', false, Json::error_handler_t::replace)) + "\n";
}

std::string json_line(const Json& document) {
  return with_unseen_escaped(document.dump(-1, ' ', false, Json::error_handler_t::replace)) + "\n";
}

}  // namespace platewright
