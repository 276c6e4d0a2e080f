// SPDX-License-Identifier: MIT
#pragma once
// Where sheets and problems go.

#include <string>

#include "cli/arguments.hpp"
#include "cli/commands.hpp"
#include "platewright/problem/problem_list.hpp"

namespace platewright::cli {

/// The sheet in the format asked for, or the text that stands for it; empty for a command that has
/// put out all that it has to say.
std::string text_of(const Result& result, const CommonOptions& common);

/// Prints `text`, or writes it to the file of `--output`, whole or not at all. Throws Failure where
/// that can't be done.
void put(const std::string& text, const CommonOptions& common);

/// Throws WrongArgument where `--output` names a file that the command reads: the book that a sheet
/// is made from is never written over.
void refuse_output_over_input(const CommandArguments& command, const CommonOptions& common);

/// The text of all problems; what each begins with in colour where `coloured`.
std::string problem_text(const ProblemList& problems, bool coloured);

}  // namespace platewright::cli
