// SPDX-License-Identifier: MIT
#include "cli/manual_page.hpp"

#include "cli/option_groups.hpp"
#include "platewright/version.hpp"

namespace platewright::cli {
namespace {

/// Text as it stands: no sign of it is a request, and hyphens are those that are typed.
std::string roff(const std::string& text) {
  std::string out = text.substr(0, 1) == "." || text.substr(0, 1) == "'" ? "\\&" : "";
  for (const char c : text) {
    if (c == '\\') {
      out += "\\e";
    } else if (c == '-') {
      out += "\\-";
    } else if (c == '`') {
      out += "\\(ga";
    } else if (c == '\'') {
      out += "\\(aq";
    } else {
      out += c;
    }
  }
  return out;
}

/// An argument of a request, in its own quotes.
std::string quoted(const std::string& text) {
  std::string out = "\"";
  for (const char c : roff(text)) out += c == '"' ? std::string("\\(dq") : std::string(1, c);
  return out + "\"";
}

std::string entry(const std::string& term, const std::string& text) {
  return ".TP\n.B " + quoted(term) + "\n" + roff(text) + "\n";
}

std::string command_section(const CommandPage& command) {
  std::string out = ".SH " + quoted("platewright " + command.name) + "\n";
  out += roff(command.what) + ".\n.PP\n.B " + quoted(synopsis(command)) + "\n";
  for (const OptionRow& row : command.arguments) out += entry(typed(row), full_text(row));
  for (const OptionSection& section : command.sections) {
    out += ".SS " + quoted(section.title) + "\n";
    if (!section.only_one.empty()) out += roff("Only one of them; " + section.only_one) + ".\n";
    for (const OptionRow& row : section.rows) out += entry(typed(row), full_text(row));
  }
  out += ".SS Examples\n";
  for (const Example& example : command.examples) {
    out += entry(example.command, example.gives);
  }
  return out;
}

std::string commands_section(const ProgramPage& program) {
  std::string out = ".SH COMMANDS\n";
  for (const CommandGroup& group : command_groups) {
    out += ".SS " + quoted(group.title) + "\n";
    for (const CommandPage& command : program.commands) {
      if (command.group == group.title) out += entry(command.name, command.what);
    }
  }
  return out;
}

}  // namespace

std::string manual_page(const ProgramPage& program) {
  std::string out = ".TH PLATEWRIGHT 1 \"\" \"platewright " PLATEWRIGHT_VERSION "\"\n";
  out += ".SH NAME\nplatewright \\- " + roff(program.what) + "\n";
  out += ".SH SYNOPSIS\n.B platewright\n.I COMMAND FILE\n[options]\n";
  out += commands_section(program);
  for (const CommandPage& command : program.commands) out += command_section(command);
  out +=
      ".SH WORDS IN CAPITALS\nThey stand for what is typed, in quotes where there is a space in "
      "it.\n";
  for (const Placeholder& known : placeholders) out += entry(known.word, known.written);
  out += ".SH ENVIRONMENT\n" +
         entry("COLUMNS",
               "how wide a sheet is on a terminal, else as wide as that is; in files and "
               "pipes it is 80 columns") +
         entry("NO_COLOR",
               "where it is set to anything, nothing is coloured; in files and pipes "
               "nothing ever is");
  out += ".SH EXIT STATUS\n" + entry("0", "done") + entry("1", "the book has problems") +
         entry("2", "the command line has problems");
  return out;
}

}  // namespace platewright::cli
