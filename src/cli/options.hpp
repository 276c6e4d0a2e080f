// SPDX-License-Identifier: MIT
#pragma once
// How an option is declared: its group, its placeholder and its words in one line. Help, manual and
// completions are made from what is declared here. CLI11 is used in the sources named for
// arguments and in those that they include.

#include <CLI/CLI.hpp>
#include <optional>
#include <string>
#include <vector>

#include "cli/option_groups.hpp"
#include "cli/placeholders.hpp"

namespace platewright::cli {

/// Adds to a command options of one group.
class Options {
 public:
  Options(CLI::App& command, const OptionGroup& group) : command_(command), title_(group.title) {}

  /// An option with a value; into a list, as many values as are written before the next option.
  template <class Value>
  CLI::Option* value(const char* name, const Placeholder& written, Value& into, const char* text) {
    return command_.add_option(name, into, text)->type_name(written.word)->group(title_);
  }

  /// One value each time it is given, so that a file's name behind it is never taken for one.
  CLI::Option* each(const char* name, const Placeholder& written, std::vector<std::string>& into,
                    const char* text) {
    return value(name, written, into, text)->allow_extra_args(false);
  }

  /// One of these words and no other.
  CLI::Option* one_of(const char* name, const char* word, const std::vector<std::string>& values,
                      std::string& into, const char* text);

  /// A whole number between two, both taken.
  CLI::Option* between(const char* name, unsigned least, unsigned most, unsigned& into,
                       const char* text);
  CLI::Option* between(const char* name, unsigned least, unsigned most,
                       std::optional<unsigned>& into, const char* text);

  CLI::Option* flag(const char* name, bool& into, const char* text) {
    return command_.add_flag(name, into, text)->group(title_);
  }

 private:
  CLI::App& command_;
  const char* title_;
};

/// Of these options at most one is given; `otherwise` says what holds where none is.
CLI::App& only_one_of(CLI::App& command, const char* name, const char* otherwise);

/// What is written without a name before it, and must be there.
template <class Value>
CLI::Option* argument(CLI::App& command, const char* name, const Placeholder& written, Value& into,
                      const char* text) {
  return command.add_option(name, into, text)->type_name(written.word)->required();
}

/// The same, one of these words.
CLI::Option* argument_of(CLI::App& command, const char* name, const char* word,
                         const std::vector<std::string>& values, std::string& into,
                         const char* text);

/// `a, b or c`.
std::string either_of(const std::vector<std::string>& values);

}  // namespace platewright::cli
