#pragma once
// What commands of every kind take. CLI11 is used in the sources named for arguments and here.

#include <CLI/CLI.hpp>
#include <string>
#include <vector>

#include "cli/arguments.hpp"

namespace platewright::cli {

inline constexpr const char* footer_text =
    "Exit codes: 0 done, 1 the book has problems, 2 the command line has.";

using Formats = std::vector<std::string>;
const Formats& sheet_formats();

/// A command with the options of every command, those of `common`.
CLI::App* add_command(CLI::App& program, const char* name, const char* what, CommonOptions& common,
                      const Formats& formats = sheet_formats());

/// For the commands whose sheets have kitchen measures; no other takes them.
void add_kitchen_options(CLI::App& app, CommonOptions& common);

void add_books(CLI::App& app, std::vector<std::string>& books);

}  // namespace platewright::cli
