// SPDX-License-Identifier: MIT
#include "cli/completions.hpp"

namespace platewright::cli {
namespace {

constexpr const char* zsh_helpers =
    R"zsh(#compdef platewright
# Completion of platewright for zsh, made by `platewright completions zsh`.

_platewright_names() {
  local -a names
  names=(${(f)"$("$_platewright_program" completions "$@" 2> /dev/null)"})
  compadd -a names
}

_platewright_cuts() { _platewright_names cuts }

_platewright_recipes() {  # of the first word that is a file
  local word
  for word in ${(Q)words[2,-1]}; do
    [[ -f $word ]] && _platewright_names recipes $word && return
  done
}

)zsh";

/// Within single quotes, and within the brackets and between the colons of a specification.
std::string zsh_text(const std::string& text) {
  std::string out;
  for (const char c : text) {
    if (c == '\'') {
      out += R"('\'')";
    } else if (c == '[' || c == ']' || c == ':' || c == '\\') {
      out += std::string("\\") + c;
    } else {
      out += c;
    }
  }
  return out;
}

std::string zsh_action(const OptionRow& row) {
  if (!row.values.empty()) {
    std::string words;
    for (const std::string& value : row.values) words += (words.empty() ? "" : " ") + value;
    return "(" + words + ")";
  }
  switch (completes(row)) {
    case Completes::nothing:
      return " ";
    case Completes::files:
      return "_files";
    case Completes::folders:
      return "_files -/";
    case Completes::recipes:
      return "_platewright_recipes";
    case Completes::cuts:
      return "_platewright_cuts";
    case Completes::commands:
      return "_platewright_commands";
  }
  return " ";
}

std::string zsh_option(const OptionRow& row) {
  std::string out = "      '";
  if (row.several) out += "*";
  out += row.name + "[" + zsh_text(row.text) + "]";
  if (!row.placeholder.empty()) out += ":" + row.placeholder + ":" + zsh_action(row);
  return out + "' \\\n";
}

std::string zsh_command(const CommandPage& command) {
  std::string out = "    " + command.name + ") _arguments \\\n      '--help[what it takes]' \\\n";
  for (const OptionSection& section : command.sections) {
    for (const OptionRow& row : section.rows) out += zsh_option(row);
  }
  for (const OptionRow& row : command.arguments) {
    out += std::string("      '") + (row.several ? "*" : "") + ":" + row.placeholder + ":" +
           zsh_action(row) + "' \\\n";
  }
  return out + "      ;;\n";
}

}  // namespace

std::string zsh_completions(const ProgramPage& program) {
  std::string out = zsh_helpers + std::string("_platewright_commands() {\n  local -a commands\n");
  out += "  commands=(\n";
  for (const CommandPage& command : program.commands) {
    out += "    '" + command.name + ":" + zsh_text(command.what) + "'\n";
  }
  out += "  )\n  _describe command commands\n}\n\n_platewright() {\n";
  out += "  local _platewright_program=$words[1]\n";
  out += "  (( CURRENT == 2 )) && { _platewright_commands; return }\n";
  out += "  shift words\n  (( CURRENT-- ))\n  case $words[1] in\n";
  for (const CommandPage& command : program.commands) out += zsh_command(command);
  // Read by `source`, or kept in a folder of functions under the name `_platewright`.
  return out +
         "  esac\n}\n\n"
         "if [ \"$funcstack[1]\" = _platewright ]; then _platewright; "
         "else compdef _platewright platewright; fi\n";
}

}  // namespace platewright::cli
