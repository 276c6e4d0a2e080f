// SPDX-License-Identifier: MIT
#include "yaml/normal_text.hpp"

#include <utf8proc.h>

#include <algorithm>
#include <cstdlib>
#include <memory>
#include <new>

#include "platewright/problem/catalogue/files.hpp"
#include "platewright/problem/unseen.hpp"
#include "platewright/problem/utf8.hpp"

namespace platewright::yaml {
namespace {

/// From Arabic to Myanmar: the blocks of the scripts that are spelt with joiners (The Unicode
/// Standard, chapter 23.2).
bool takes_joiners(char32_t code) {
  return code >= 0x0600 && code <= 0x109F;
}

bool is_seen(char32_t code, char32_t before) {
  if (code == '\t' || code == '\n' || code == '\r') return true;
  if (is_joiner(code)) return takes_joiners(before);
  return !is_control(code) && !is_default_ignorable(code);
}

/// Unicode Standard Annex 15, Stream-Safe Text Format: no language piles up more of them.
constexpr int most_marks = 30;

/// What stands on the letter before it. To bring many of them into their order takes the square of
/// their number.
bool is_mark(char32_t code) {
  return code >= 0x300 &&
         utf8proc_get_property(static_cast<utf8proc_int32_t>(code))->combining_class != 0;
}

bool is_ascii(std::string_view text) {
  return std::all_of(text.begin(), text.end(),
                     [](char c) { return static_cast<unsigned char>(c) < 0x80U; });
}

}  // namespace

std::string normal_text(std::string_view text) {
  if (is_ascii(text)) return std::string(text);
  utf8proc_uint8_t* raw = nullptr;
  const auto length =
      utf8proc_map(reinterpret_cast<const utf8proc_uint8_t*>(text.data()),
                   static_cast<utf8proc_ssize_t>(text.size()), &raw,
                   static_cast<utf8proc_option_t>(UTF8PROC_STABLE | UTF8PROC_COMPOSE));
  const std::unique_ptr<utf8proc_uint8_t, decltype(&std::free)> normal(raw, &std::free);
  if (length == UTF8PROC_ERROR_NOMEM) throw std::bad_alloc();
  if (length < 0) return std::string(text);
  return {reinterpret_cast<const char*>(normal.get()), static_cast<std::size_t>(length)};
}

std::optional<Problem> unfit_sign_in(std::string_view text) {
  char32_t before = 0;
  std::size_t number = 0;
  int marks = 0;
  for (std::size_t i = 0; i < text.size();) {
    const Character character = character_at(text, i);
    if (character.length == 0) return std::nullopt;  // no UTF-8, which is said elsewhere
    ++number;
    if (!is_seen(character.code, before)) {
      return problems::unseen_sign(character.code, number, text);
    }
    marks = is_mark(character.code) ? marks + 1 : 0;
    if (marks > most_marks) return problems::marks_piled_up(most_marks, number);
    before = character.code;
    i += character.length;
  }
  return std::nullopt;
}

bool says_something(std::string_view name) {
  for (std::size_t i = 0; i < name.size();) {
    const Character character = character_at(name, i);
    if (character.length == 0) return true;
    switch (utf8proc_category(static_cast<utf8proc_int32_t>(character.code))) {
      case UTF8PROC_CATEGORY_LU:
      case UTF8PROC_CATEGORY_LL:
      case UTF8PROC_CATEGORY_LT:
      case UTF8PROC_CATEGORY_LM:
      case UTF8PROC_CATEGORY_LO:
      case UTF8PROC_CATEGORY_ND:
      case UTF8PROC_CATEGORY_NL:
      case UTF8PROC_CATEGORY_NO:
        return true;
      default:
        i += character.length;
    }
  }
  return false;
}

}  // namespace platewright::yaml
