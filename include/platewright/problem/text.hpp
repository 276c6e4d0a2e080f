// SPDX-License-Identifier: MIT
#pragma once
// Small helpers that every problem's wording uses.

#include <cstddef>
#include <string>
#include <string_view>

#include "platewright/problem/body.hpp"
#include "platewright/problem/unseen.hpp"
#include "platewright/problem/utf8.hpp"

namespace platewright {

/// `text` with its control characters, its signs that turn the reading direction and its bytes that
/// are not UTF-8 written as escapes (`\x1B`, `\u202E`, `\U000E0001`), so that a hostile name can't
/// change how a message or a sheet is shown. What comes out is always valid UTF-8.
std::string escaped(std::string_view text);

/// Without the spaces and tabs at both ends.
std::string_view trimmed_spaces(std::string_view text);

/// `text` between quotation marks, shortened to `limit` bytes (never inside a UTF-8 sequence) and
/// `escaped`.
std::string in_quotes(std::string_view text, std::size_t limit = 60);

}  // namespace platewright

#ifdef PLATEWRIGHT_HEADER_ONLY
#include "platewright/problem/bodies/text.hpp"
#endif
