// SPDX-License-Identifier: MIT
#include <algorithm>

#include "cli/options.hpp"
#include "platewright/problem/text.hpp"

namespace platewright::cli {
namespace {

/// The description of the check keeps the words for whoever lists them, a line each.
CLI::Validator word_of(const std::vector<std::string>& values) {
  std::string listed;
  for (const std::string& value : values) listed += (listed.empty() ? "" : "\n") + value;
  const auto complaint = [values](const std::string& found) {
    if (std::find(values.begin(), values.end(), found) != values.end()) return std::string();
    return "takes " + either_of(values) + ", not " + in_quotes(found);
  };
  return CLI::Validator([complaint](std::string& found) { return complaint(found); }, listed);
}

CLI::Validator whole_number(unsigned least, unsigned most) {
  const auto complaint = [least, most](std::string& found) {
    unsigned number = 0;
    if (CLI::detail::lexical_cast(found, number) && number >= least && number <= most) {
      return std::string();
    }
    return "takes a whole number from " + std::to_string(least) + " to " + std::to_string(most) +
           ", not " + in_quotes(found);
  };
  return CLI::Validator(complaint, "");
}

}  // namespace

std::string either_of(const std::vector<std::string>& values) {
  std::string out;
  for (const std::string& value : values) {
    const bool last = &value == &values.back();
    out += (out.empty() ? "" : last ? " or " : ", ") + value;
  }
  return out;
}

CLI::Option* Options::one_of(const char* name, const char* word,
                             const std::vector<std::string>& values, std::string& into,
                             const char* text) {
  return command_.add_option(name, into, text)
      ->type_name(word)
      ->check(word_of(values))
      ->group(title_);
}

CLI::Option* Options::between(const char* name, unsigned least, unsigned most, unsigned& into,
                              const char* text) {
  return value(name, placeholder::count, into, text)->check(whole_number(least, most));
}

CLI::Option* Options::between(const char* name, unsigned least, unsigned most,
                              std::optional<unsigned>& into, const char* text) {
  return value(name, placeholder::count, into, text)->check(whole_number(least, most));
}

CLI::App& only_one_of(CLI::App& command, const char* name, const char* otherwise) {
  return *command.add_option_group(name, otherwise)->require_option(0, 1);
}

CLI::Option* argument_of(CLI::App& command, const char* name, const char* word,
                         const std::vector<std::string>& values, std::string& into,
                         const char* text) {
  return command.add_option(name, into, text)->type_name(word)->required()->check(word_of(values));
}

}  // namespace platewright::cli
