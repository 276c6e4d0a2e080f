// SPDX-License-Identifier: MIT
#include "cli/command_mistakes.hpp"

#include <string>
#include <utility>

#include "cli/options.hpp"
#include "platewright/problem/nearest.hpp"

namespace platewright::cli {
namespace {

/// Where to read on.
std::string see_help(const std::string& command) {
  return "`platewright help" + (command.empty() ? "" : " " + command) + "` says more.\n";
}

std::vector<const OptionRow*> options_of(const CommandPage& command) {
  std::vector<const OptionRow*> out;
  for (const OptionSection& section : command.sections) {
    for (const OptionRow& row : section.rows) out.push_back(&row);
  }
  return out;
}

std::vector<std::string> option_names(const CommandPage& command) {
  std::vector<std::string> out;
  for (const OptionRow* row : options_of(command)) out.push_back(row->name);
  return out;
}

/// Which commands take this option.
std::string takers_of(const ProgramPage& program, const std::string& option) {
  std::string out;
  for (const CommandPage& command : program.commands) {
    for (const OptionRow* row : options_of(command)) {
      if (row->name == option) out += (out.empty() ? "" : ", ") + command.name;
    }
  }
  return out;
}

/// An option that this command does not take: the nearest of its own, and which commands take it.
std::string unknown_option(const ProgramPage& program, const CommandPage& command,
                           const std::string& word) {
  const std::string option = word.substr(0, word.find('='));
  std::string out = "`" + command.name + "` does not take " + in_quotes(option);
  if (const std::string near = did_you_mean(option, option_names(command)); !near.empty()) {
    out += "; " + near;
  }
  if (const std::string takers = takers_of(program, option); !takers.empty()) {
    out += "; it is an option of " + takers;
  }
  return out + "\n";
}

/// The first option among what the parser could not place; empty where there is none.
std::string first_option(const CLI::App& program) {
  for (const std::string& word : program.remaining(true)) {
    if (word.size() > 2 && word.substr(0, 2) == "--") return word;
  }
  return {};
}

/// What must be there and is not.
std::string missing_text(const CLI::App& used, const CommandPage& page) {
  std::string out;
  const auto add = [&](const OptionRow& row, bool given) {
    if (row.required && !given) out += "  " + typed(row) + ": " + full_text(row) + "\n";
  };
  std::size_t at = 0;
  for (const CLI::Option* option : used.get_options()) {
    if (option->get_positional()) add(page.arguments.at(at++), option->count() > 0);
  }
  for (const OptionRow* row : options_of(page)) {
    if (row->required) add(*row, used.get_option(row->name)->count() > 0);
  }
  return "`" + page.name + "` needs\n" + out;
}

/// Of some options at most one is given.
std::string only_one_text(const CLI::App& used) {
  for (const CLI::App* group : used.get_subcommands({})) {
    std::vector<std::string> given;
    for (const CLI::Option* option : group->get_options()) {
      if (option->count() > 0) given.push_back(option->get_name());
    }
    if (given.size() < 2) continue;
    std::string out = "only one can be given of";
    for (const std::string& name : given) out += " " + name + (name == given.back() ? "" : ",");
    return out + "\n";
  }
  return {};
}

/// `A excludes B` and `A requires B` as people say it.
std::string as_said(const std::string& text) {
  for (const auto& [parser_word, word] : {std::pair(" excludes ", " can't stand beside "),
                                          std::pair(" requires ", " can only stand beside ")}) {
    const std::size_t at = text.find(parser_word);
    if (at == std::string::npos) continue;
    return text.substr(0, at) + word + text.substr(at + std::string(parser_word).size()) + "\n";
  }
  return text + "\n";
}

std::string text_in_command(const CLI::App& program, const CLI::App& used, const CommandPage& page,
                            const CLI::ParseError& error) {
  const ProgramPage all = describe(program);
  if (const std::string option = first_option(program); !option.empty()) {
    return unknown_option(all, page, option);
  }
  if (dynamic_cast<const CLI::RequiredError*>(&error) != nullptr) {
    const std::string only_one = only_one_text(used);
    return only_one.empty() ? missing_text(used, page) : only_one;
  }
  return as_said(error.what());
}

}  // namespace

std::string empty_word_text(int number) {
  return "word " + std::to_string(number) +
         " behind `platewright` is empty: leave it out, or say what should stand there; a name "
         "that a script fills in may be unset\n" +
         see_help("");
}

std::string unknown_command(const ProgramPage& page, const std::string& word) {
  std::vector<std::string> known;
  for (const CommandPage& command : page.commands) known.push_back(command.name);
  const std::string near = did_you_mean(word, known);
  return "no command called " + in_quotes(word) + (near.empty() ? "" : "; " + near) + "\n" +
         see_help("");
}

std::string mistake_text(const CLI::App& program, const CLI::ParseError& error,
                         const std::string& first) {
  const auto used = program.get_subcommands();
  if (used.empty() && first.empty()) {
    return "which command? `platewright help` lists them; `platewright new event FOLDER` makes a "
           "folder to begin with\n";
  }
  if (used.empty() && first[0] != '-') return unknown_command(describe(program), first);
  if (used.empty()) {
    const std::string near = did_you_mean(first, {"--help", "--version"});
    return "no option called " + in_quotes(first) + (near.empty() ? "" : "; " + near) + "\n" +
           see_help("");
  }
  const CommandPage page = *find_command(describe(program), used.front()->get_name());
  return text_in_command(program, *used.front(), page, error) + see_help(page.name);
}

}  // namespace platewright::cli
