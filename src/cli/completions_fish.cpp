// SPDX-License-Identifier: MIT
#include "cli/completions.hpp"

namespace platewright::cli {
namespace {

constexpr const char* fish_helpers =
    R"fish(# Completion of platewright for fish, made by `platewright completions fish`.

function __platewright_recipes # of the first word that is a file
    for word in (commandline -opc)[2..-1]
        if test -f "$word"
            platewright completions recipes "$word" 2>/dev/null
            return
        end
    end
end

complete -c platewright -f
)fish";

std::string fish_text(const std::string& text) {
  std::string out = "'";
  for (const char c : text) {
    if (c == '\'' || c == '\\') out += '\\';
    out += c;
  }
  return out + "'";
}

/// What is offered for a value; empty where nothing is, not even files.
std::string fish_values(const OptionRow& row) {
  if (!row.values.empty()) {
    std::string words;
    for (const std::string& value : row.values) words += (words.empty() ? "" : " ") + value;
    return " -a '" + words + "'";
  }
  switch (completes(row)) {
    case Completes::nothing:
      return {};
    case Completes::files:
      return " -F";
    case Completes::folders:
      return " -a '(__fish_complete_directories)'";
    case Completes::recipes:
      return " -a '(__platewright_recipes)'";
    case Completes::cuts:
      return " -a '(platewright completions cuts 2>/dev/null)'";
    case Completes::commands:
      return " -a '(platewright completions commands 2>/dev/null)'";
  }
  return {};
}

std::string fish_command(const CommandPage& command) {
  std::string out = "complete -c platewright -n __fish_use_subcommand -a " + command.name + " -d " +
                    fish_text(command.what) + "\n";
  const std::string used =
      "complete -c platewright -n '__fish_seen_subcommand_from " + command.name + "'";
  for (const OptionSection& section : command.sections) {
    for (const OptionRow& row : section.rows) {
      out += used + " -l " + row.name.substr(2);
      const bool files = completes(row) == Completes::files;
      if (!row.placeholder.empty()) out += (files ? " -r" : " -x") + fish_values(row);
      out += " -d " + fish_text(row.text) + "\n";
    }
  }
  for (const OptionRow& row : command.arguments) {
    const std::string values = fish_values(row);
    if (!values.empty()) out += used + values + "\n";
  }
  return out;
}

}  // namespace

std::string fish_completions(const ProgramPage& program) {
  std::string out = fish_helpers;
  for (const CommandPage& command : program.commands) out += fish_command(command);
  return out;
}

}  // namespace platewright::cli
