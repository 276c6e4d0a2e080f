// SPDX-License-Identifier: MIT
#pragma once
// What the terminal is like, if there is one. Files and pipes never depend on it.

#include <optional>
#include <string>

namespace platewright::cli {

/// Columns of the terminal that standard output goes to: what COLUMNS says, else the terminal
/// itself. Nothing where output goes to a file or a pipe.
std::optional<unsigned> terminal_columns();

/// Columns of a page that has `usual` ones on paper: what the terminal has, at most a quarter more,
/// since long lines are hard to read; `usual` where there is no terminal.
unsigned columns_for(unsigned usual);

/// Whether what is written to this descriptor may be coloured: a terminal that is no `dumb` one,
/// and NO_COLOR is not set to anything.
bool may_be_coloured(int descriptor);

/// The sheet with what may hurt someone in red; the words stay as they are.
std::string with_dangers_coloured(const std::string& text);

/// What a message begins with: problems red, warnings yellow.
std::string with_message_coloured(const std::string& text);

}  // namespace platewright::cli
