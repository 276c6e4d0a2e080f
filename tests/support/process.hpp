// SPDX-License-Identifier: MIT
#pragma once
// Runs another program and keeps what it says.

#include <filesystem>
#include <string>
#include <vector>

namespace platewright::test {

/// How a program ended. A program that was ended by signal N, or that ran out of time, has exit
/// code 128 + N, as a shell reports it.
struct Outcome {
  int exit = 0;
  std::string printed;
  std::string complained;
};

/// Runs `words[0]` (searched in PATH unless it has a slash) in `folder`, where it reads `input`,
/// and ends it after `seconds`. Throws std::runtime_error if it can't be started.
Outcome run(const std::vector<std::string>& words, const std::filesystem::path& folder,
            unsigned seconds = 60, const std::string& input = "/dev/null");

/// Splits a command line at blanks; single and double quotes keep blanks, as in a shell.
std::vector<std::string> words_of(const std::string& line);

}  // namespace platewright::test
