// SPDX-License-Identifier: MIT
#pragma once
// Pages of help, as they are read on a screen.

#include <string>

#include "cli/command_page.hpp"

namespace platewright::cli {

/// Every command, by who wants it.
std::string program_help(const ProgramPage& program, unsigned width);

/// What one command takes, with examples.
std::string command_help(const CommandPage& command, unsigned width);

}  // namespace platewright::cli
