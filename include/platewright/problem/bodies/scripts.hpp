// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/problem/scripts.hpp.

#include <cstddef>

#include "platewright/problem/scripts.hpp"

namespace platewright {

PLATEWRIGHT_BODY LookAlikeScript script_of(char32_t code) {
  const auto within = [code](char32_t first, char32_t last) {
    return code >= first && code <= last;
  };
  if (within('A', 'Z') || within('a', 'z') || code == 0xAA || code == 0xBA ||
      (within(0xC0, 0x24F) && code != 0xD7 && code != 0xF7) || within(0x1E00, 0x1EFF)) {
    return LookAlikeScript::latin;
  }
  if ((within(0x370, 0x3FF) && code != 0x37E && code != 0x387) || within(0x1F00, 0x1FFF)) {
    return LookAlikeScript::greek;
  }
  return within(0x400, 0x52F) ? LookAlikeScript::cyrillic : LookAlikeScript::none;
}

PLATEWRIGHT_BODY std::string_view name_of(LookAlikeScript script) {
  switch (script) {
    case LookAlikeScript::latin:
      return "Latin";
    case LookAlikeScript::greek:
      return "Greek";
    case LookAlikeScript::cyrillic:
      return "Cyrillic";
    case LookAlikeScript::none:
      break;
  }
  return "";
}

PLATEWRIGHT_BODY std::optional<MixedWord> mixed_word(std::string_view name) {
  MixedWord out;
  std::size_t begin = 0;
  for (std::size_t i = 0; i < name.size();) {
    const Character character = character_at(name, i);
    const std::size_t length = character.length == 0 ? 1 : character.length;
    const LookAlikeScript script = script_of(character.code);
    if (script == LookAlikeScript::none) {
      if (out.second != LookAlikeScript::none) return out;
      out = {};
      begin = i + length;
    } else {
      if (out.first == LookAlikeScript::none) out.first = script;
      if (script != out.first && out.second == LookAlikeScript::none) out.second = script;
      out.word = std::string(name.substr(begin, i + length - begin));
    }
    i += length;
  }
  return out.second == LookAlikeScript::none ? std::nullopt : std::optional(out);
}

}  // namespace platewright
