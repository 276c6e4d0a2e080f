// SPDX-License-Identifier: MIT
// From the parser's own table of arguments to plain values.

#include <algorithm>

#include "cli/command_page.hpp"
#include "cli/options.hpp"

namespace platewright::cli {
namespace {

std::vector<std::string> names_of(const std::set<CLI::Option*>& options) {
  std::vector<std::string> out;
  for (const CLI::Option* option : options) out.push_back(option->get_name());
  std::sort(out.begin(), out.end());
  return out;
}

/// The parser says `WORD:first\nsecond` where only these are taken.
void split_type(const std::string& type, OptionRow& row) {
  const std::size_t colon = type.find(':');
  row.placeholder = type.substr(0, colon);
  for (std::size_t at = colon; at != std::string::npos;) {
    const std::size_t end = type.find('\n', at + 1);
    row.values.push_back(type.substr(at + 1, end == std::string::npos ? end : end - at - 1));
    at = end;
  }
}

OptionRow row_of(const CLI::Option& option) {
  OptionRow row;
  row.text = option.get_description();
  row.required = option.get_required();
  row.not_with = names_of(option.get_excludes());
  row.only_with = names_of(option.get_needs());
  const bool flag = option.get_items_expected_max() == 0;
  if (!option.get_positional()) row.name = option.get_name();
  if (!flag) {
    split_type(option.get_type_name(), row);
    const bool takes_more = option.get_items_expected_max() > 1;
    row.several = takes_more && option.get_delimiter() == '\0';
  }
  return row;
}

void add_row(std::vector<OptionSection>& sections, const std::string& title,
             const std::string& only_one, OptionRow row) {
  for (OptionSection& section : sections) {
    if (section.title != title) continue;
    section.rows.push_back(std::move(row));
    if (!only_one.empty()) section.only_one = only_one;
    return;
  }
  sections.push_back({title, only_one, {std::move(row)}});
}

/// The options of a command, those among which only one is given included.
void collect(const CLI::App& app, const std::string& only_one, CommandPage& page) {
  for (const CLI::Option* option : app.get_options()) {
    if (option == app.get_help_ptr()) continue;
    OptionRow row = row_of(*option);
    if (option->get_positional()) {
      page.arguments.push_back(std::move(row));
    } else {
      add_row(page.sections, option->get_group(), only_one, std::move(row));
    }
  }
  for (const CLI::App* group : app.get_subcommands({})) {
    collect(*group, group->get_description(), page);
  }
}

std::size_t rank(const std::string& title) {
  const auto found = std::find_if(option_groups.begin(), option_groups.end(),
                                  [&](const OptionGroup& group) { return group.title == title; });
  return static_cast<std::size_t>(found - option_groups.begin());
}

CommandPage page_of(const CLI::App& command) {
  CommandPage page;
  page.name = command.get_name();
  page.what = command.get_description();
  page.group = command.get_group();
  collect(command, {}, page);
  std::stable_sort(page.sections.begin(), page.sections.end(),
                   [](const OptionSection& left, const OptionSection& right) {
                     return rank(left.title) < rank(right.title);
                   });
  page.examples = examples_of(page.name);
  return page;
}

}  // namespace

ProgramPage describe(const CLI::App& program) {
  ProgramPage out;
  out.what = program.get_description();
  for (const CLI::App* command : program.get_subcommands({})) {
    out.commands.push_back(page_of(*command));
  }
  return out;
}

}  // namespace platewright::cli
