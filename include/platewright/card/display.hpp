// SPDX-License-Identifier: MIT
#pragma once
// Text measured as a page shows it: in columns, not in bytes.

#include <string>
#include <string_view>
#include <vector>

namespace platewright {

/// Columns that `text` takes on a page with letters of one width: 2 for a wide character (East
/// Asian), 0 for a combining one, else 1. A byte that is not UTF-8 counts 1.
unsigned display_width(std::string_view text);

/// Columns of the longest word, words being parted by spaces.
unsigned longest_word(std::string_view text);

/// `text` in lines of at most `width` columns (at least 2), broken at spaces; a word that is longer
/// is broken between two characters, never before a combining one. Runs of spaces count as one. `%`
/// and `°` stay with the number before them. Gives at least one line.
std::vector<std::string> wrapped(std::string_view text, unsigned width);

/// `text` with spaces after it (or before it) up to `width` columns.
std::string padded_after(std::string text, unsigned width);
std::string padded_before(std::string text, unsigned width);

/// Data as it may stand inside a line: line ends and tabs become spaces, every other control
/// character is `escaped`.
std::string on_one_line(std::string_view data);

/// `text` with the signs that this library prints written in ASCII: `130 °F` becomes `130 F`, `×`
/// x, `–` a hyphen, `½` 1/2. Letters stay as they are.
std::string in_ascii_signs(std::string_view text);

/// `text` in capital letters; what is not UTF-8 stays.
std::string in_capitals(std::string_view text);

}  // namespace platewright
