// SPDX-License-Identifier: MIT
#pragma once
// One spelling for what looks the same.

#include <optional>
#include <string>
#include <string_view>

#include "platewright/problem/problem.hpp"

namespace platewright::yaml {

/// `text`, which must be UTF-8, in Unicode's normalization form C (UAX #15): an accent that was
/// typed as a sign of its own is the letter with its accent.
std::string normal_text(std::string_view text);

/// What is wrong with the first sign of `text` that nobody sees, or with marks that no language
/// piles up so; nothing where there is none. Tabs and line ends are seen; so are the joiners
/// between letters of the scripts that are spelt with them. A text that is wrong here is not for
/// `normal_text`.
std::optional<Problem> unfit_sign_in(std::string_view text);

/// Whether there is a letter or a digit in it.
bool says_something(std::string_view name);

}  // namespace platewright::yaml
