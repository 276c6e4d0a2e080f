// SPDX-License-Identifier: MIT
#include "cli/command_page.hpp"

#include <algorithm>

#include "cli/options.hpp"

namespace platewright::cli {
namespace {

void add_remark(std::string& out, const std::string& remark) {
  out += (out.empty() ? "" : "; ") + remark;
}

void add_rows(std::vector<std::string>& words, const std::vector<OptionRow>& rows) {
  for (const OptionRow& row : rows) words.push_back(row.placeholder);
}

}  // namespace

const CommandPage* find_command(const ProgramPage& program, std::string_view name) {
  for (const CommandPage& command : program.commands) {
    if (command.name == name) return &command;
  }
  return nullptr;
}

const Placeholder* find_placeholder(std::string_view word) {
  for (const Placeholder& known : placeholders) {
    if (known.word == word) return &known;
  }
  return nullptr;
}

std::string typed(const OptionRow& row) {
  if (row.name.empty()) return row.placeholder + (row.several ? "..." : "");
  return row.name + (row.placeholder.empty() ? "" : " " + row.placeholder);
}

std::string full_text(const OptionRow& row) {
  std::string out = row.values.empty() ? "" : either_of(row.values);
  add_remark(out, row.text);
  if (row.several && !row.name.empty()) add_remark(out, "may be given more than once");
  if (!row.not_with.empty()) add_remark(out, "not with " + either_of(row.not_with));
  if (!row.only_with.empty()) add_remark(out, "only with " + either_of(row.only_with));
  return out;
}

std::string synopsis(const CommandPage& command) {
  std::string out = "platewright " + command.name;
  for (const OptionRow& row : command.arguments) {
    out += row.required ? " " + typed(row) : " [" + typed(row) + "]";
  }
  bool more = false;
  for (const OptionSection& section : command.sections) {
    for (const OptionRow& row : section.rows) {
      if (row.required) out += " " + typed(row);
      more = more || !row.required;
    }
  }
  return out + (more ? " [options]" : "");
}

std::vector<Placeholder> explained(const CommandPage& command) {
  std::vector<std::string> words;
  add_rows(words, command.arguments);
  for (const OptionSection& section : command.sections) add_rows(words, section.rows);
  std::vector<Placeholder> out;
  for (const Placeholder& known : placeholders) {
    if (std::find(words.begin(), words.end(), known.word) != words.end()) out.push_back(known);
  }
  return out;
}

}  // namespace platewright::cli
