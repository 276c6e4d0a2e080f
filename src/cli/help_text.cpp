// SPDX-License-Identifier: MIT
#include "cli/help_text.hpp"

#include <algorithm>

#include "cli/option_groups.hpp"
#include "platewright/card/display.hpp"

namespace platewright::cli {
namespace {

constexpr unsigned command_column = 15;
constexpr unsigned text_column = 27;

std::string lines(const std::string& text, unsigned width, const std::string& before) {
  std::string out;
  for (const std::string& line : wrapped(text, std::max(20U, width - display_width(before)))) {
    out += before + line + "\n";
  }
  return out;
}

/// `left` at its place, and `right` in lines beside it; below it where it is too long.
std::string beside(const std::string& left, const std::string& right, unsigned width,
                   unsigned column = text_column) {
  const std::string indented = "  " + left;
  std::string out = lines(right, width, std::string(column, ' '));
  if (display_width(indented) + 1 < column) {
    return indented + out.substr(display_width(indented));
  }
  return indented + "\n" + out;
}

/// What is typed, its further lines further in.
std::string typed_lines(const std::string& text, unsigned width) {
  std::string out;
  for (const std::string& line : wrapped(text, std::max(20U, width - 6))) {
    out += (out.empty() ? "  " : "      ") + line + "\n";
  }
  return out;
}

std::string heading(const OptionSection& section, unsigned width) {
  if (section.only_one.empty()) return section.title + "\n";
  return lines(section.title + " (only one of them; " + section.only_one + ")", width, "");
}

std::string options_text(const CommandPage& command, unsigned width) {
  std::string out;
  for (const OptionRow& row : command.arguments) {
    out += beside(typed(row), full_text(row), width);
  }
  for (const OptionSection& section : command.sections) {
    out += "\n" + heading(section, width);
    for (const OptionRow& row : section.rows) out += beside(typed(row), full_text(row), width);
  }
  return out;
}

std::string placeholders_text(const CommandPage& command, unsigned width) {
  const auto words = explained(command);
  if (words.empty()) return {};
  std::string out =
      "\n" + lines("What to type for the words in capitals, in quotes where there is a space in it",
                   width, "");
  for (const Placeholder& placeholder : words) {
    out += beside(placeholder.word, placeholder.written, width);
  }
  return out;
}

/// A command that is longer than the page is wide goes on behind a backslash, so that it can still
/// be copied.
std::string command_lines(const std::string& command, unsigned width) {
  std::string out;
  std::string line = "  ";
  for (std::size_t at = 0; at < command.size();) {
    std::size_t end = command.find(" --", at + 1);
    if (end == std::string::npos) end = command.size();
    const std::string part = command.substr(at, end - at);
    if (line.size() + part.size() + 2 > width && line.size() > 2) {
      out += line + " \\\n";
      line = "     ";
    }
    line += part;
    at = end;
  }
  return out + line + "\n";
}

std::string examples_text(const CommandPage& command, unsigned width) {
  if (command.examples.empty()) return {};
  std::string out = "\nFor example\n";
  for (const Example& example : command.examples) {
    out += lines(example.gives, width, "  # ");
    out += command_lines(example.command, width);
  }
  return out;
}

}  // namespace

std::string program_help(const ProgramPage& program, unsigned width) {
  std::string out = lines("platewright: " + program.what, width, "");
  out += "\nYou type\n  platewright COMMAND FILE [options]\n";
  for (const CommandGroup& group : command_groups) {
    out += "\n" + std::string(group.title) + "\n";
    for (const CommandPage& command : program.commands) {
      if (command.group == group.title) {
        out += beside(command.name, command.what, width, command_column);
      }
    }
  }
  out += "\n" + lines(
                    "`platewright help card` says what `card` takes, with examples; so for each "
                    "command. `platewright --version` says which version this is.",
                    width, "");
  out += lines("Exit codes, for scripts: 0 done, 1 the book has problems, 2 the command line has.",
               width, "");
  return out;
}

std::string command_help(const CommandPage& command, unsigned width) {
  std::string out = lines("platewright " + command.name + ": " + command.what, width, "");
  out += "\nYou type\n" + typed_lines(synopsis(command), width);
  if (!command.arguments.empty()) out += "\n";
  out += options_text(command, width);
  out += placeholders_text(command, width);
  out += examples_text(command, width);
  return out;
}

}  // namespace platewright::cli
