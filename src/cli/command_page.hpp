// SPDX-License-Identifier: MIT
#pragma once
// What the program takes, as plain values: help, manual and completions are made from them.

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "cli/examples.hpp"
#include "cli/placeholders.hpp"

namespace CLI {
class App;
}

namespace platewright::cli {

/// An option, or an argument that is written without a name.
struct OptionRow {
  std::string name;                 ///< `--portions`; empty for an argument without a name
  std::string placeholder;          ///< `NUMBER`; empty for a flag
  std::string text;                 ///< what it does
  std::vector<std::string> values;  ///< where it is one of these words
  bool several = false;             ///< may be given more than once, or more than one
  bool required = false;
  std::vector<std::string> not_with;  ///< names of options that it can't stand beside
  std::vector<std::string> only_with;
};

struct OptionSection {
  std::string title;
  std::string only_one;  ///< where at most one is given: what holds if none is
  std::vector<OptionRow> rows;
};

struct CommandPage {
  std::string name;
  std::string what;
  std::string group;
  std::vector<OptionRow> arguments;
  std::vector<OptionSection> sections;
  std::vector<Example> examples;
};

struct ProgramPage {
  std::string what;
  std::vector<CommandPage> commands;
};

/// What was declared, groups in their order.
ProgramPage describe(const CLI::App& program);

/// The command of this name; nothing where there is none.
const CommandPage* find_command(const ProgramPage& program, std::string_view name);

/// How the values of a placeholder are written; nothing for one that says it itself.
const Placeholder* find_placeholder(std::string_view word);

/// `--portions NUMBER`, `FILE...`.
std::string typed(const OptionRow& row);

/// What it does, then which words it takes and what it can't stand beside.
std::string full_text(const OptionRow& row);

/// `platewright card FILE [options]`: what must be typed, and that there is more.
std::string synopsis(const CommandPage& command);

/// The placeholders that a command has and that are explained, in the order of their words.
std::vector<Placeholder> explained(const CommandPage& command);

}  // namespace platewright::cli
