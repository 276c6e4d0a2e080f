// SPDX-License-Identifier: MIT
#pragma once
// A command line that was understood is run, whoever asks.

#include <functional>

#include "cli/arguments.hpp"
#include "cli/commands.hpp"

namespace platewright::cli {

constexpr int done = 0;
constexpr int book_has_problems = 1;
constexpr int wrong_command_line = 2;

/// Runs the command and hands its result to `give`, unless there is any error; what is wrong is in
/// `problems`. Gives back the exit code.
int run_line(const CommandArguments& command, const CommonOptions& common, ProblemList& problems,
             const std::function<void(const Result&)>& give);

}  // namespace platewright::cli
