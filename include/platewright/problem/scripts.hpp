// SPDX-License-Identifier: MIT
#pragma once
// Scripts whose letters look alike.

#include <optional>
#include <string>
#include <string_view>

#include "platewright/problem/body.hpp"
#include "platewright/problem/utf8.hpp"

namespace platewright {

enum class LookAlikeScript { none, latin, greek, cyrillic };

/// By the blocks of the Unicode Standard. Signs that are no letters, and letters of other scripts,
/// are `none`.
LookAlikeScript script_of(char32_t code);

/// A word with letters of two of the scripts, and which two.
struct MixedWord {
  std::string word;
  LookAlikeScript first = LookAlikeScript::none;
  LookAlikeScript second = LookAlikeScript::none;
};

std::string_view name_of(LookAlikeScript script);

/// The first such word of a name; words are parted by whatever is no letter of these scripts.
std::optional<MixedWord> mixed_word(std::string_view name);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/problem/bodies/scripts.hpp"
#endif
