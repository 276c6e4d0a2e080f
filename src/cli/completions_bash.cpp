// SPDX-License-Identifier: MIT
#include <map>

#include "cli/completions.hpp"

namespace platewright::cli {
namespace {

/// Finds the file among the words, and offers names in quotes as they were begun.
constexpr const char* bash_helpers =
    R"bash(# Completion of platewright for bash, made by `platewright completions bash`.

_platewright_offer() {  # the names that begin as the word does, one a line of the input
  local typed=$1 quote= name
  case $typed in
    \"* | \'*) quote=${typed:0:1} typed=${typed:1} ;;
    *) typed=${typed//\\/} ;;
  esac
  while IFS= read -r name; do
    [[ $name == "$typed"* ]] || continue
    [ -n "$quote" ] || printf -v name '%q' "$name"
    COMPREPLY+=("$name")
  done
}

_platewright_file() {  # the first word that is a file
  local word
  for word in "${COMP_WORDS[@]:2}"; do
    word=${word//[\"\'\\]/}
    [ -f "$word" ] && printf '%s\n' "$word" && return
  done
}

_platewright_value() {  # what may stand there, and the word that was begun
  local kind=$1 current=$2
  case $kind in
    files) mapfile -t COMPREPLY < <(compgen -f -- "$current") && compopt -o filenames ;;
    folders) mapfile -t COMPREPLY < <(compgen -d -- "$current") && compopt -o filenames ;;
    cuts) _platewright_offer "$current" < <("${COMP_WORDS[0]}" completions cuts) ;;
    recipes)
      _platewright_offer "$current" \
        < <("${COMP_WORDS[0]}" completions recipes "$(_platewright_file)") ;;
    *) mapfile -t COMPREPLY < <(compgen -W "$kind" -- "$current") ;;
  esac 2> /dev/null
}

)bash";

/// As `_platewright_value` knows it; empty where nothing is offered.
std::string bash_kind(const OptionRow& row, const std::string& commands) {
  if (!row.values.empty()) {
    std::string words;
    for (const std::string& value : row.values) words += (words.empty() ? "" : " ") + value;
    return words;
  }
  switch (completes(row)) {
    case Completes::nothing:
      return {};
    case Completes::files:
      return "files";
    case Completes::folders:
      return "folders";
    case Completes::recipes:
      return "recipes";
    case Completes::cuts:
      return "cuts";
    case Completes::commands:
      return commands;
  }
  return {};
}

/// Patterns of a `case`, gathered by what is offered for them.
class Cases {
 public:
  void add(const std::string& pattern, const std::string& kind) {
    by_kind_[kind] += " | " + pattern;
  }
  std::string text() const {
    std::string out;
    for (const auto& [kind, patterns] : by_kind_) {
      out += "    " + patterns.substr(3) + ") kind='" + kind + "' ;;\n";
    }
    return out;
  }

 private:
  std::map<std::string, std::string> by_kind_;
};

std::string options_of_commands(const ProgramPage& program) {
  std::string out;
  for (const CommandPage& command : program.commands) {
    out += "    " + command.name + ") kind='--help";
    for (const OptionSection& section : command.sections) {
      for (const OptionRow& row : section.rows) out += " " + row.name;
    }
    out += "' ;;\n";
  }
  return out;
}

}  // namespace

std::string bash_completions(const ProgramPage& program) {
  std::string commands;
  for (const CommandPage& command : program.commands) {
    commands += (commands.empty() ? "" : " ") + command.name;
  }
  Cases behind;
  Cases numbered;  // before those that stand anywhere
  Cases further;
  for (const CommandPage& command : program.commands) {
    for (const OptionSection& section : command.sections) {
      for (const OptionRow& row : section.rows) {
        if (row.placeholder.empty()) continue;
        behind.add(command.name + ":" + row.name, bash_kind(row, commands));
      }
    }
    int number = 1;
    for (const OptionRow& row : command.arguments) {
      const bool anywhere = row.several || command.arguments.size() == 1;
      const std::string place = anywhere ? "*" : std::to_string(number++);
      (anywhere ? further : numbered).add(command.name + ":" + place, bash_kind(row, commands));
    }
  }
  return bash_helpers + std::string("_platewright() {\n") +
         "  local current=${COMP_WORDS[COMP_CWORD]} previous=${COMP_WORDS[COMP_CWORD - 1]}\n"
         "  local command=${COMP_WORDS[1]} kind= number=$((COMP_CWORD - 1))\n"
         "  COMPREPLY=()\n"
         "  if [ \"$COMP_CWORD\" -eq 1 ]; then\n"
         "    _platewright_value '" +
         commands +
         " --help --version' \"$current\"\n"
         "    return\n"
         "  fi\n"
         "  case $command:$previous in\n" +
         behind.text() +
         "    *) previous= ;;\n"
         "  esac\n"
         "  [ -n \"$previous\" ] || case $current in -*) case $command in\n" +
         options_of_commands(program) + "  esac ;; *) case $command:$number in\n" +
         numbered.text() + further.text() +
         "  esac ;; esac\n"
         "  [ -z \"$kind\" ] || _platewright_value \"$kind\" \"$current\"\n"
         "}\n"
         "complete -F _platewright platewright\n";
}

}  // namespace platewright::cli
