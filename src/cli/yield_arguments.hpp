#pragma once
// The options of the commands that work with yields.

#include <CLI/CLI.hpp>

#include "cli/arguments.hpp"

namespace platewright::cli {

void add_yield_command(CLI::App& program, YieldArguments& parsed, CommonOptions& common);
void add_worksheet_command(CLI::App& program, WorksheetArguments& parsed, CommonOptions& common);
void add_trials_command(CLI::App& program, TrialsArguments& parsed, CommonOptions& common);

}  // namespace platewright::cli
