// SPDX-License-Identifier: MIT
#pragma once
// What a shell is told so that it can finish what is typed.

#include <string>

#include "cli/command_page.hpp"

namespace platewright::cli {

std::string bash_completions(const ProgramPage& program);
std::string zsh_completions(const ProgramPage& program);
std::string fish_completions(const ProgramPage& program);

/// What is offered for the value of an option, or for an argument without a name.
inline Completes completes(const OptionRow& row) {
  const Placeholder* known = find_placeholder(row.placeholder);
  return known == nullptr ? Completes::nothing : known->completes;
}

}  // namespace platewright::cli
