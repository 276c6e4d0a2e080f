// SPDX-License-Identifier: MIT
#pragma once
// What is said where a command line can't be understood.

#include <CLI/CLI.hpp>
#include <string>

#include "cli/command_page.hpp"

namespace platewright::cli {

/// The word of this number behind the program's name is empty.
std::string empty_word_text(int number);

/// No command of this name: the nearest ones.
std::string unknown_command(const ProgramPage& page, const std::string& word);

/// What is wrong, and what to type instead. `first` is the first word behind the program's name.
std::string mistake_text(const CLI::App& program, const CLI::ParseError& error,
                         const std::string& first);

}  // namespace platewright::cli
