// SPDX-License-Identifier: MIT
#pragma once
// The ordinary slips behind a text that YAML can't read, told from the lines themselves.

#include <optional>
#include <string>
#include <string_view>

#include "platewright/problem/problem.hpp"

namespace platewright::yaml {

/// What is wrong at or before `line`, where the parser gave up, and what to type instead, at its
/// own place; nothing where the slip is none of those known. Lines count from 1.
std::optional<Problem> slip_before(std::string_view text, const std::string& file, int line);

/// A quotation mark that swallowed the lines behind its own: YAML may read on without a word, to
/// the next mark or to the end of the file.
std::optional<Problem> quote_over_lines(std::string_view text, const std::string& file);

}  // namespace platewright::yaml
